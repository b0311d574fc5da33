package rungbook.rules.safety;

import java.util.List;
import rungbook.action.Condition;
import rungbook.rules.StateRule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.State;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A proof that proves nothing, because the power has not been isolated on some path. */
public final class ProvedBeforeIsolating extends StateRule {

  static final Code PROVED_BEFORE_ISOLATING = Code.of("proved-before-isolating");

  @Override
  public List<Code> codes() {
    return List.of(PROVED_BEFORE_ISOLATING);
  }

  @Override
  protected boolean concerns(Step step, Subject subject) {
    return MeterNotProved.first(Condition.PROVED_DEAD, step) >= 0;
  }

  @Override
  protected void inspect(Step step, Subject subject, State.Moment moment, Problems out) {
    int proof = MeterNotProved.first(Condition.PROVED_DEAD, step);
    for (int action = 0; action < proof; action++) {
      moment.pass();
    }
    if (!moment.isPowerOff()) {
      out.add(Problem.at(PROVED_BEFORE_ISOLATING, step.source(), step.actions().get(proof).thing().span())
          .shownBy(moment.showLacking(subject.state().facts().of(Fact.POWER_OFF), "")));
    }
  }
}
