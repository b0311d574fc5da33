package rungbook.circuit.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.NetworkStructure;
import rungbook.system.BenchSystem;
import rungbook.system.ControlSystem;

/** How a search goes on and ends; what it finds is in the tests of readings. */
class SteadyStateSearchTest {

  private static final ControlSystem SYSTEM = BenchSystem.read("L1 N A B", """
      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      wire: wire, L1 to A
      coil: coil, 24 V, 5 VA, A to N
      late: state, set when coil on, reset when not coil on, after 4 rounds
      buzzer contact: contact, A to B, closed when not buzzer on and late
      buzzer: coil, 24 V, 5 VA, B to N
      ```

      ```faults
      broken: open wire
      ```
      """).system();

  private final CircuitNetwork network = CircuitNetwork.of(SYSTEM);
  private final CircuitModel model = new CircuitModel(network, new RelayLogic(network),
      new Samples(List.of(Draw.MIDDLE)));
  private final FaultCase broken = FaultCase.of(SYSTEM.faults().get(0), network);

  private List<SteadyState> settle(FaultCase fault) {
    var found = new ArrayList<SteadyState>();
    CircuitState state = CircuitState.start(SYSTEM.vocabulary());
    var start = new SteadyStateSearch.Start(0, fault, model.faulted(fault),
        EquipmentState.of(network, state), new int[] {0},
        model.logic().dropped(new boolean[0], state, fault));
    new SteadyStateSearch(model, SteadyStateSearch.solver(model, NetworkStructure.of(network, List.of(fault))),
        new KnownLevels(model, new IslandCases(model.network())), new BitSet(),
        (from, steady, solved) -> found.add(steady)).run(List.of(start));
    return found;
  }

  @Test
  void givesUpWhenItsThreadIsInterrupted() {
    Thread.currentThread().interrupt();
    assertThrows(CancellationException.class, () -> settle(FaultCase.HEALTHY));
    assertTrue(Thread.interrupted());
  }

  /** The delay changes no branch for four rounds, and then the contact that opens its own coil closes. */
  @Test
  void followsADelayToACircuitThatNeverSettles() {
    assertEquals(List.of(false), settle(FaultCase.HEALTHY).stream().map(SteadyState::converged).toList());
  }

  @Test
  void aCoilWithoutCurrentSettlesAtOnce() {
    SteadyState steady = settle(broken).get(0);
    assertTrue(steady.converged());
    assertEquals(RelayState.OFF, steady.relays().loads[0]);
  }
}
