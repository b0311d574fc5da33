package rungbook.rules.safety;

import java.util.Map;
import rungbook.rules.state.Sources;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;

/** The circuit that feeds the equipment: breakers, power switches and their terminals, and the cables between them. */
final class BranchCircuit {

  private BranchCircuit() {}

  /** @param key the lookup key of a part, a point or a control */
  static boolean has(Vocabulary system, String key) {
    Control control = system.controls().get(key);
    boolean isSwitch = control != null && control.role() == Role.ISOLATOR;
    boolean isTerminal = system.points().containsKey(key) && Sources.isLineVoltage(system.points().get(key))
        && Sources.mayBeAheadOfAny(system, key);
    return isSwitch || isTerminal || system.isKind(key, "breaker") || isFeed(system, key);
  }

  /** A cable with line voltage, or a conductor of one; a conductor is named after its terminal and its cable. */
  private static boolean isFeed(Vocabulary system, String key) {
    for (Map.Entry<String, Part> cable : system.parts().entrySet()) {
      boolean asked = key.equals(cable.getKey()) || (system.isKind(key, "conductor") && isOf(cable.getKey(), key));
      if (cable.getValue().kind().equals("cable") && asked && carriesLineVoltage(system, cable.getKey())) {
        return true;
      }
    }
    return false;
  }

  private static boolean carriesLineVoltage(Vocabulary system, String cable) {
    for (String part : system.parts().keySet()) {
      if (system.isKind(part, "conductor") && isOf(cable, part)) {
        Vocabulary.Point end = system.points().get(part.substring(0, part.length() - cable.length() - 1));
        if (end != null && Sources.isLineVoltage(end)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isOf(String cable, String conductor) {
    return conductor.endsWith(" " + cable);
  }
}
