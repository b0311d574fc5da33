package rungbook.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import rungbook.circuit.network.CircuitState;
import rungbook.library.ShortRun;

/** The states in which a case is looked at. */
final class CoveringStates {

  private CoveringStates() {}

  /**
   * All of them; in a short run, for a case with a fault, enough to meet every position of every control.
   *
   * @param number of the case; each takes other states
   */
  static List<CircuitState> of(int number, List<CircuitState> states) {
    if (!ShortRun.IS || number == 0) {
      return states;
    }
    var shuffled = new ArrayList<>(states);
    Collections.shuffle(shuffled, new Random(number));
    var met = new HashSet<Map.Entry<String, String>>();
    return shuffled.stream().filter(state -> met.addAll(state.positions().entrySet())).toList();
  }
}
