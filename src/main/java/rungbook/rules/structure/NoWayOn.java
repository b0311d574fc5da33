package rungbook.rules.structure;

import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** Every path ends in a finding, so every other step leads on. Ways that could not be read are reported where they stand. */
public final class NoWayOn implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    for (Step step : subject.tree().steps()) {
      if (step.ways().isEmpty() && !(step instanceof Step.Finding) && step.particulars().section().unread().isEmpty()) {
        out.add(Problem.at("no-way-on", step.source(), step.particulars().titleSpan())
            .with("step", step.title()).with("kind", step.particulars().block().kind()));
      }
    }
  }
}
