package rungbook.rules.api;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A rule about an action in the state of the whole equipment on one path: controls, switches and panels together. It
 * needs the parts of the tree's system.
 */
public abstract class JointRule implements Rule {

  @Override
  public final void inspect(RuleContext context, Problems out) {
    if (context.tree().circuit().isEmpty()) {
      return;
    }
    for (int number : context.state().order()) {
      Step step = context.state().step(number);
      List<Action> actions = step.actions();
      for (int action = 0; action < actions.size(); action++) {
        if (concerns(actions.get(action), context)) {
          inspect(number, action, context).ifPresent(out::add);
        }
      }
    }
  }

  private Optional<Problem> inspect(int number, int action, RuleContext context) {
    Step step = context.state().step(number);
    Set<BitSet> inspected = new HashSet<>();
    for (JointStates.Arrival arrival : context.state().joint().at(number)) {
      BitSet before = arrival.after(action);
      if (inspected.add(before)) {
        Optional<Problem> problem = inspect(step.actions().get(action), step, context, before);
        if (problem.isPresent()) {
          return Optional.of(problem.get().shownBy(arrival.shown()));
        }
      }
    }
    return Optional.empty();
  }

  /** The facts before an action, with its power source on. */
  protected static BitSet withSourceOn(Action action, RuleContext context, BitSet before) {
    BitSet on = (BitSet) before.clone();
    int isolated = context.state().facts().of(Fact.ISOLATED, action.key());
    if (isolated != FactTable.NONE) {
      on.clear(isolated);
    }
    return on;
  }

  /** Whether an action can violate the rule; false skips computing its states. */
  protected abstract boolean concerns(Action action, RuleContext context);

  /** @param before the facts that hold before the action */
  protected abstract Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before);
}
