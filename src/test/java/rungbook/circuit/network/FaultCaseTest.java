package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.system.BenchSystem;
import rungbook.system.ControlSystem;
import rungbook.system.Interval;

/** What a fault changes, before anything is solved. */
class FaultCaseTest {

  private static final String PARTS = """
      ```parts
      supply: supply, 24 V, from 22 to 26 V, 0.5 ohm, L1 to N
      bond: joint, N to ground
      wire: wire, L1 to A
      pole: contact, A to B, closed when lamp on
      lamp: load, 24 V, 5 W, A to N
      fan: load, 24 V, 5 W, B to N
      ```

      ```faults
      fault: %s
      ```
      """;

  private static CircuitNetwork network(String effect) {
    ControlSystem system = BenchSystem.read("L1 N A B", PARTS.formatted(effect)).system();
    return CircuitNetwork.of(system);
  }

  private static FaultCase fault(CircuitNetwork network) {
    return FaultCase.of(network.system().faults().get(0), network);
  }

  /**
   * Weakened 3 times, a winding has 2 times its ohms more, all in the core, which had a quarter of them: 1 + 4 · 2. The
   * tap for 208 V has 120/208 of the ratio.
   */
  @Test
  void aFaultOfATransformerChangesItsOwnCore() {
    CircuitNetwork network = CircuitNetwork.of(BenchSystem.read("L1 N A B C", """
        ```parts
        supply: supply, 120 V, 0.05 ohm, L1 to N
        bond: joint, N to ground, C to ground
        first: transformer, 120 V primary, 24 V secondary, 40 VA, L1 to N, A to C
        second: transformer, 120 V primary, 24 V secondary, 40 VA, L1 to N, B to C
        ```

        ```faults
        weak: weaken second 3 times
        tapped: tap second for 208 V
        ```
        """).system());
    List<NetworkChange> changes = network.system().faults().stream()
        .flatMap(fault -> FaultCase.of(fault, network).changes().stream()).toList();
    assertEquals(List.of(new NetworkChange.Core(1, new Spread(Interval.exactly(9), "weak 1"), 1),
        NetworkChange.Core.ofRatio(1, 120 / 208.0)), changes);
  }

  /** Only more current than before opens a fuse. */
  @ParameterizedTest
  @CsvSource({"short lamp, true", "short A to B, true", "hold pole closed, true", "hold pole open, false",
      "open wire, false", "raise wire by 2 ohm, false", "stop lamp, false", "overload lamp to 150 %, true",
      "stiffen lamp to 22 V, false", "short A to B through 1 to 2 ohm, true"})
  void onlyAShortOrAContactThatIsStuckClosedMayBlowFuses(String effect, boolean may) {
    assertEquals(may, fault(network(effect)).mayBlowFuses());
  }

  /**
   * Norton: I = V / R of the source, 24 V / 0.5 Ω; with 1.5 Ω more in series 24 / 2; 13 V at the middle of 12 to 14.
   */
  @ParameterizedTest
  @CsvSource({"raise supply by 1.5 ohm, 12", "lower supply to 12 to 14 V, 26", "open supply, 0"})
  void aFaultOfTheSupplyChangesItsCurrent(String effect, double amps) {
    CircuitNetwork network = network(effect);
    var parameters = new SampledParameters(network, new Samples(List.of(Draw.MIDDLE)));
    assertEquals(48, parameters.currents.re[0][0], 1e-12);
    assertEquals(amps, parameters.currents(fault(network)).re[0][0], 1e-12);
  }

  /** Sharing them lets a fault start from the healthy network's voltages. */
  @ParameterizedTest
  @CsvSource({"raise wire by 2 ohm", "open wire", "short lamp"})
  void otherFaultsShareTheHealthyCurrents(String effect) {
    CircuitNetwork network = network(effect);
    var parameters = new SampledParameters(network, new Samples(List.of(Draw.MIDDLE)));
    assertSame(parameters.currents, parameters.currents(fault(network)));
  }

  /** A supply of 22 to 26 V drawn at its low end, lowered to 12 to 14 V: 12 V on 0.5 Ω. */
  @Test
  void aLoweredSupplyKeepsItsDraw() {
    CircuitNetwork network = network("lower supply to 12 to 14 V");
    var parameters = new SampledParameters(network,
        new Samples(List.of((tolerance, part) -> tolerance == Tolerance.SUPPLY && part.equals("supply") ? -1 : 0)));
    assertEquals(44, parameters.currents.re[0][0], 1e-12);
    assertEquals(24, parameters.currents(fault(network)).re[0][0], 1e-12);
  }
}
