package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;

/** The tree has too many names for the path analysis; it is rejected instead of being partly checked. */
public final class TooManyNames implements Rule {

  static final Code TOO_MANY_NAMES = Code.of("too-many-names");

  @Override
  public List<Code> codes() {
    return List.of(TOO_MANY_NAMES);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    if (context.state().isTooLarge()) {
      out.add(Problem.at(TOO_MANY_NAMES, context.tree().source(), context.tree().document().frontSpan())
          .with("names", context.state().facts().count()).with("steps", context.tree().steps().size()));
    }
  }
}
