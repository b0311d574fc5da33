package rungbook.rules.safety;

import java.util.List;
import rungbook.action.Condition;
import rungbook.rules.StateRule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.Facts;
import rungbook.rules.flow.State;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A fuse is replaced a second time on a path, and nobody has looked for the short: no ohms, nothing disconnected in between. */
public final class FuseAgain extends StateRule {

  static final Code FUSE_AGAIN = Code.of("fuse-again");

  @Override
  public List<Code> codes() {
    return List.of(FUSE_AGAIN);
  }

  @Override
  protected boolean concerns(Subject subject) {
    return subject.state().facts().any(Fact.FUSE_REPLACED);
  }

  @Override
  protected boolean concerns(Step step, Subject subject) {
    return !step.actions().isEmpty();
  }

  @Override
  protected void inspect(Step step, Subject subject, State.Moment moment, Problems out) {
    for (Action action : step.actions()) {
      inspect(action, step, subject.state(), moment, out);
      moment.pass();
    }
  }

  private static void inspect(Action action, Step step, State state, State.Moment moment, Problems out) {
    boolean replaces = action.kind().begins(Condition.REPLACED);
    int replaced = replaces ? state.facts().of(Fact.FUSE_REPLACED, action.key()) : Facts.NONE;
    if (moment.may(replaced)) {
      Problem problem = Problem.at(FUSE_AGAIN, step.source(), action.thing().span()).with("fuse", action.thing().text());
      out.add(problem.shownBy(moment.showHolding(replaced, "")));
    }
  }
}
