package rungbook.pack.path;

import java.util.OptionalLong;
import rungbook.action.EquipmentCondition;
import rungbook.proof.HighestVoltages;
import rungbook.rules.state.Sources;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * At which steps the leads touch more than 50 V, the limit of 29 CFR 1910.333(a)(1). What cannot be ruled out counts:
 * a point that is to be proved dead is live until it is.
 */
public final class LiveLeads {

  private final Tree tree;
  private final HighestVoltages voltages;

  public LiveLeads(Tree tree, HighestVoltages voltages) {
    this.tree = tree;
    this.voltages = voltages;
  }

  public boolean at(int number) {
    Step step = tree.steps().get(number);
    if (step instanceof Step.MeterCheck check) {
      return isReadLive(check.quantity())
          && (check.leads().stream().anyMatch(lead -> isLine(lead.key())) || volts(number).isPresent());
    }
    return step.actions().stream().filter(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD))
        .anyMatch(action -> isLine(action.key()));
  }

  /** The highest voltage between the leads of a check, if it is known to be line voltage. */
  public OptionalLong volts(int step) {
    double highest = voltages.at(step).orElse(0);
    return highest > Vocabulary.LINE_VOLTS ? OptionalLong.of(Math.round(highest)) : OptionalLong.empty();
  }

  private static boolean isReadLive(Quantity quantity) {
    return quantity.isVolts() || quantity == Quantity.AC_AMPS;
  }

  private boolean isLine(String point) {
    return Sources.isLineVoltage(tree.system(), point);
  }
}
