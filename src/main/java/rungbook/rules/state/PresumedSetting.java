package rungbook.rules.state;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/**
 * A check relies on a control at a position that, on some path, it does not have; or at its first position, where on
 * some path no task has set it and nobody knows where the customer left it.
 */
public final class PresumedSetting extends StateRule {

  static final Code CALL_NOT_MADE = Code.of("call-not-made");
  static final Code START_NOT_SET = Code.of("start-not-set");

  @Override
  public List<Code> codes() {
    return List.of(CALL_NOT_MADE, START_NOT_SET);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.Check check && !check.presumed().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    FactTable facts = context.state().facts();
    for (Setting setting : ((Step.Check) step).presumed()) {
      int at = facts.at(setting);
      int set = facts.of(Fact.SET, setting.control());
      if (!point.must(at)) {
        out.add(problem(CALL_NOT_MADE, step, setting).shownBy(point.showLacking(at, "")));
      } else if (!point.must(set)) {
        out.add(problem(START_NOT_SET, step, setting).with("control", setting.control())
            .shownBy(point.showLacking(set, "")));
      }
    }
  }

  private static Problem problem(Code code, Step step, Setting setting) {
    return Problem.at(code, step.source(), setting.span()).with("setting", setting);
  }
}
