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
   * Where sample 0 of a case comes to rest, the network it was read from, the same solved in full, and the same
   * circuit as a netlist.
   */
  record Rest(String name, SteadyState settled, Network network, Network full, Netlist netlist) {}

  private Settle() {}

  static Rest of(Dictionary dictionary, StateSolver run, CircuitState state, int number, Draw draw) {
    FaultCase fault = dictionary.caseList().get(number);
    var settling = new SteadyStateSearch(run, fault);
    List<SteadyState> all = settling.from(dictionary.blown(number, state));
    SteadyState settled = all.get(0);
    Netlist netlist = Schematic.of(dictionary.wiring(), fault, draw, settled.modes(),
        new TechnicianOverrides(dictionary.wiring(), state));
    return new Rest(fault.name() + " " + state.positions(), settled, settling.network(settled.modes()),
        run.inFull(settled.modes(), fault, settling.altered()), netlist);
  }
}
