package rungbook.rules.state;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/** A check assumes a control at a position that, on some path, no task has set. */
public final class CallNotMade extends StateRule {

  static final Code CALL_NOT_MADE = Code.of("call-not-made");

  @Override
  public List<Code> codes() {
    return List.of(CALL_NOT_MADE);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.Check check && !check.presumed().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Setting setting : ((Step.Check) step).presumed()) {
      int fact = context.state().facts().at(setting);
      if (!point.must(fact)) {
        out.add(Problem.at(CALL_NOT_MADE, step.source(), setting.span()).with("setting", setting)
            .shownBy(point.showLacking(fact, "")));
      }
    }
  }
}
