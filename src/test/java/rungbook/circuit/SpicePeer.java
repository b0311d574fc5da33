package rungbook.circuit;

import java.io.IOException;
import java.util.Map;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.system.ControlSystem;

/**
 * A measured part of a dictionary's points, solved by ngspice in one process: every case of a cooling call, one sample,
 * several pairs.
 */
public final class SpicePeer {

  private final Spice spice;
  private final int points;

  /** @param pairs how many pairs of leads, each a circuit of its own because the meter is part of it */
  public SpicePeer(ControlSystem system, int pairs) {
    Samples one = Samples.seeded(1, 1);
    var dictionary = Dictionary.of(system, one);
    CircuitState state = CircuitState.start(system.vocabulary()).set("thermostat", "cooling");
    spice = new Spice(dictionary.network().hertz());
    points = dictionary.cases().size() * pairs;
    for (int i = 0; i < dictionary.cases().size(); i++) {
      Netlist netlist = Settle.of(dictionary, state, i, one.draws().get(0)).netlist();
      for (int pair = 1; pair <= pairs; pair++) {
        spice.add(netlist.with(Element.resistor("meter", Schematic.node(pair), Netlist.GROUND, 10e6)));
      }
    }
  }

  /** How many readings a run gives. */
  public int points() {
    return points;
  }

  public Map<String, Phasor> run() throws IOException, InterruptedException {
    return spice.run();
  }
}
