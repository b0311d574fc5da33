package rungbook.pack.path;

import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.FlowGraph;
import rungbook.system.Quantity;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Where the meter's dial is as a step begins: at what the last reading before it was taken with. */
public final class DialSettings {

  /** The bit of a dial that nobody has set. */
  private static final int UNSET = Quantity.values().length;

  private final Tree tree;
  private final DataflowSolver before;

  public DialSettings(Tree tree, FlowGraph graph) {
    this.tree = tree;
    long[] set = new long[tree.steps().size()];
    long[] lost = new long[set.length];
    for (int step = 0; step < set.length; step++) {
      Optional<Quantity> at = setBy(tree.steps().get(step));
      set[step] = at.map(quantity -> 1L << quantity.ordinal()).orElse(0L);
      lost[step] = at.isPresent() ? -1 : 0;
    }
    this.before = DataflowSolver.solve(graph, 1L << UNSET, set, lost, null, null);
  }

  /** What a step leaves the dial at; empty if it takes no reading. */
  public static Optional<Quantity> setBy(Step step) {
    if (step instanceof Step.MeterCheck check) {
      return Optional.of(check.quantity());
    }
    Optional<Quantity> last = Optional.empty();
    for (Action action : step.actions()) {
      if (action.kind().begins(EquipmentCondition.PROVED_DEAD)) {
        last = Optional.of(Quantity.AC_VOLTS);
      } else if (action.kind().begins(EquipmentCondition.DISCHARGED)) {
        last = Optional.of(Quantity.DC_VOLTS);
      }
    }
    return last;
  }

  public DialTurn at(int step) {
    long may = before.at(step);
    long same = setBy(tree.steps().get(step)).map(quantity -> 1L << quantity.ordinal()).orElse(may);
    if (may == same) {
      return DialTurn.NONE;
    }
    boolean other = (may & same) == 0;
    return may == 1L << UNSET ? DialTurn.SET : other ? DialTurn.TURN : DialTurn.LOOK;
  }
}
