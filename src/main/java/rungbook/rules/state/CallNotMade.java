package rungbook.rules.state;

import java.util.List;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/** A check presumes a control at a position to which, on some path, no task has brought it. */
public final class CallNotMade implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      if (state.step(step) instanceof Step.Check check && !check.presumed().isEmpty()) {
        moment.enter(step);
        inspect(check, state, moment, out);
      }
    }
  }

  private static void inspect(Step.Check check, State state, State.Moment moment, Problems out) {
    List<Setting> presumed = check.presumed();
    for (Setting setting : presumed) {
      int fact = state.facts().at(setting);
      if (!moment.must(fact)) {
        Problem problem = Problem.at("call-not-made", check.source(), setting.span()).with("setting", setting);
        out.add(moment.showLacking(fact, "").map(problem::shownBy).orElse(problem));
      }
    }
  }
}
