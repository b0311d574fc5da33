package rungbook.rules.state;

import java.util.List;
import rungbook.rules.StateRule;
import rungbook.rules.Subject;
import rungbook.rules.flow.State;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/** A check presumes a control at a position to which, on some path, no task has brought it. */
public final class CallNotMade extends StateRule {

  static final Code CALL_NOT_MADE = Code.of("call-not-made");

  @Override
  public List<Code> codes() {
    return List.of(CALL_NOT_MADE);
  }

  @Override
  protected boolean concerns(Step step, Subject subject) {
    return step instanceof Step.Check check && !check.presumed().isEmpty();
  }

  @Override
  protected void inspect(Step step, Subject subject, State.Moment moment, Problems out) {
    for (Setting setting : ((Step.Check) step).presumed()) {
      int fact = subject.state().facts().at(setting);
      if (!moment.must(fact)) {
        out.add(Problem.at(CALL_NOT_MADE, step.source(), setting.span()).with("setting", setting)
            .shownBy(moment.showLacking(fact, "")));
      }
    }
  }
}
