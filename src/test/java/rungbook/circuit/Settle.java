package rungbook.circuit;

import java.util.List;

/** Settles a system for tests, one case and sample at a time. */
final class Settle {

  /** Where sample 0 of a case comes to rest, the network it was read from, the same solved in full, and the same circuit as a netlist. */
  record Rest(String name, Settled settled, Network network, Network full, Netlist netlist) {}

  private Settle() {}

  static Rest of(Dictionary dictionary, Run run, CircuitState state, int number, Draw draw) {
    Case fault = dictionary.caseList().get(number);
    var settling = new Settling(run, fault);
    List<Settled> all = settling.from(dictionary.blown(number, state));
    Settled settled = all.get(0);
    Netlist netlist =
        Schematic.of(dictionary.wiring(), fault, draw, settled.modes(), new Arrangement(dictionary.wiring(), state));
    return new Rest(fault.name() + " " + state.positions(), settled, settling.network(settled.modes()),
        run.inFull(settled.modes(), fault, settling.altered()), netlist);
  }
}
