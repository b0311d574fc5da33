package rungbook.circuit;

import java.util.List;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.Network;
import rungbook.circuit.solver.TechnicianOverrides;

/** Settles a system for tests, one case and sample at a time. */
final class Settle {

  /**
   * The steady state of sample 0 of a case, the network it was read from, the same solved in full, and the same circuit
   * as a netlist.
   */
  record Result(String name, SteadyState steadyState, Network network, Network full, Netlist netlist) {}

  private Settle() {}

  static Result of(Dictionary dictionary, StateSolver solver, CircuitState state, int number, Draw draw) {
    FaultCase fault = dictionary.caseList().get(number);
    var search = new SteadyStateSearch(solver, fault);
    List<SteadyState> all = search.from(dictionary.blown(number, state));
    SteadyState steadyState = all.get(0);
    Netlist netlist = Schematic.of(dictionary.network(), fault, draw, steadyState.modes(),
        new TechnicianOverrides(dictionary.network(), state));
    return new Result(fault.name() + " " + state.positions(), steadyState, search.network(steadyState.modes()),
        solver.solveInFull(steadyState.modes(), fault, search.faulted()), netlist);
  }
}
