package rungbook.circuit.sequence;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.RowPool;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.LowRankNetwork;
import rungbook.system.BenchSystem;
import rungbook.system.ControlSystem;

/** What a search costs and leaves behind; what it finds is in the tests of readings. */
class SteadyStateSearchTest {

  private static final ControlSystem SYSTEM = BenchSystem.read("L1 N A", """
      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      wire: wire, L1 to A
      lamp: load, 24 V, 5 W, A to N
      ```

      ```faults
      corroded: raise wire by 2 ohm
      ```
      """).system();

  private final CircuitModel model = new CircuitModel(CircuitNetwork.of(SYSTEM), new Samples(List.of(Draw.MIDDLE)));
  private final StateSolver solver = new StateSolver(model, CircuitState.start(SYSTEM.vocabulary()));
  private final FaultCase corroded = FaultCase.of(SYSTEM.faults().get(0), model.network());

  private byte[] modes(SteadyStateSearch search) {
    return search.from(SteadyStateSearch.noneBlown(model)).get(0).modes();
  }

  /** Whether rows are in the pool; a handful is more than this circuit needs. */
  private boolean isIdle(ComplexRows rows, RowPool pool) {
    return Stream.generate(() -> pool.take(rows.re.length)).limit(9).anyMatch(taken -> taken == rows);
  }

  @Test
  void givesUpWhenItsThreadIsInterrupted() {
    try (var search = new SteadyStateSearch(solver, FaultCase.HEALTHY)) {
      Thread.currentThread().interrupt();
      assertThrows(CancellationException.class, () -> modes(search));
    } finally {
      assertTrue(Thread.interrupted());
    }
  }

  /** A full solve gives the same volts and takes several times as long. */
  @Test
  void solvesAFaultAsAnUpdateOfTheHealthyNetwork() {
    try (var search = new SteadyStateSearch(solver, corroded)) {
      assertInstanceOf(LowRankNetwork.class, search.network(modes(search)));
    }
  }

  @Test
  void closedSearchGivesItsRowsBack() {
    ComplexRows alternating;
    ComplexRows direct;
    try (var search = new SteadyStateSearch(solver, corroded)) {
      byte[] modes = modes(search);
      alternating = search.network(modes).volts();
      direct = search.direct(modes).volts();
    }
    assertTrue(isIdle(alternating, model.alternating().pool()));
    assertTrue(isIdle(direct, model.direct().pool()));
  }

  @Test
  void closedSolverGivesTheHealthyNetworkBack() {
    var search = new SteadyStateSearch(solver, FaultCase.HEALTHY);
    ComplexRows healthy = search.network(modes(search)).volts();
    search.close();
    assertFalse(isIdle(healthy, model.alternating().pool()), "other cases still need it");
    solver.close();
    assertTrue(isIdle(healthy, model.alternating().pool()));
  }
}
