package rungbook.rules.safety;

import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.source.Problem;
import rungbook.source.Problems;

/** The tree names more things than can be followed along its paths; it is refused rather than half checked. */
public final class TooManyNames implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    if (subject.state().isTooLarge()) {
      out.add(Problem.at("too-many-names", subject.tree().source(), subject.tree().document().frontSpan())
          .with("names", subject.state().facts().count()).with("steps", subject.tree().steps().size()));
    }
  }
}
