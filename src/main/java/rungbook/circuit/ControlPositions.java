package rungbook.circuit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.sequence.ConeOfInfluence;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/**
 * The positions of the controls in which a case may have blown a fuse, or tripped a switch with manual reset, before
 * the technician arrives.
 *
 * @param controls that are tried in every combination; the others stay at their first positions
 * @param count how many combinations; none for a case that opens nothing
 */
public record ControlPositions(CircuitState start, List<Vocabulary.Control> controls, long count) {

  public ControlPositions {
    controls = List.copyOf(controls);
  }

  /** For each case, the positions of the controls in its cone of influence. */
  static List<ControlPositions> of(CircuitNetwork network, List<FaultCase> cases) {
    CircuitState start = CircuitState.start(network.system().vocabulary());
    var cone = new ConeOfInfluence(network);
    var none = new ControlPositions(start, List.of(), 0);
    boolean trips = network.system().parts(Part.Switch.class).anyMatch(Part.Switch::manualReset);
    return cases.stream().map(fault -> fault.mayBlowFuses() || (trips && !fault.equals(FaultCase.HEALTHY))
        ? of(start, cone.of(fault)) : none).toList();
  }

  static ControlPositions of(CircuitState start, List<Vocabulary.Control> controls) {
    return new ControlPositions(start, controls, CircuitState.positionCount(controls));
  }

  /** How many positions are tried for each fault of a system, by the fault's key; at most {@code Long.MAX_VALUE}. */
  public static Map<String, Long> counts(ControlSystem system) {
    CircuitNetwork network = CircuitNetwork.of(system);
    var counts = new LinkedHashMap<String, Long>();
    List<FaultCase> cases = system.faults().stream().map(fault -> FaultCase.of(fault, network)).toList();
    List<ControlPositions> positions = of(network, cases);
    for (int i = 0; i < cases.size(); i++) {
      counts.put(cases.get(i).name(), positions.get(i).count());
    }
    return counts;
  }

  /** One combination by its number; the last control changes first. */
  CircuitState state(long number) {
    CircuitState state = start;
    long rest = number;
    for (int i = controls.size() - 1; i >= 0; i--) {
      List<String> positions = controls.get(i).positions();
      state = state.set(Names.key(controls.get(i).name()), positions.get((int) (rest % positions.size())));
      rest /= positions.size();
    }
    return state;
  }
}
