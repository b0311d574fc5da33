package rungbook.rules.state;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/**
 * A check relies on a control at its first position, and on some path no task has set it: nobody knows where the
 * customer left it. {@link CallNotMade} reports any other position.
 */
public final class StartNotSet extends StateRule {

  static final Code START_NOT_SET = Code.of("start-not-set");

  @Override
  public List<Code> codes() {
    return List.of(START_NOT_SET);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.Check check && !check.presumed().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Setting setting : ((Step.Check) step).presumed()) {
      int set = context.state().facts().of(Fact.SET, setting.control());
      if (point.must(context.state().facts().at(setting)) && !point.must(set)) {
        out.add(Problem.at(START_NOT_SET, step.source(), setting.span()).with("setting", setting)
            .with("control", setting.control()).shownBy(point.showLacking(set, "")));
      }
    }
  }
}
