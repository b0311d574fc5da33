package rungbook.rules.cautions;

import java.util.List;
import java.util.Optional;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.safety.LineVoltage;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** Leads go on points that may be at 50 V or more, and the step does not warn of line voltage. */
public final class LineVoltageUnsaid implements Rule {

  static final Code LINE_VOLTAGE_UNSAID = Code.of("line-voltage-unsaid");

  private static final String CAUTION = "line voltage";

  @Override
  public List<Code> codes() {
    return List.of(LINE_VOLTAGE_UNSAID);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    for (int step = 0; step < steps.size(); step++) {
      if (context.graph().isReached(step)) {
        Step reached = steps.get(step);
        Optional<Span> shown = LineVoltage.met(reached, context.tree());
        if (shown.isPresent() && !warns(reached, CAUTION)) {
          out.add(Problem.at(LINE_VOLTAGE_UNSAID, reached.source(), shown.get()));
        }
      }
    }
  }

  /** Whether a step names a caution, by its key. */
  static boolean warns(Step step, String caution) {
    for (NameRef named : step.header().cautions()) {
      if (named.key().equals(caution)) {
        return true;
      }
    }
    return false;
  }
}
