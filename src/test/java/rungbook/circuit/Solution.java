package rungbook.circuit;

import java.util.Map;
import rungbook.circuit.network.Phasor;

/** The voltages and currents of a {@link Netlist}, rms phasors. */
public final class Solution {

  private final Netlist netlist;
  private final Islands islands;
  private final Map<String, Phasor> volts;
  private final Map<String, Phasor> amps;

  Solution(Netlist netlist, Islands islands, Map<String, Phasor> volts, Map<String, Phasor> amps) {
    this.netlist = netlist;
    this.islands = islands;
    this.volts = volts;
    this.amps = amps;
  }

  /** Nothing ties this node to ground: its own voltage means nothing. */
  public boolean floating(String node) {
    return !volts.containsKey(node) || islands.floating(node);
  }

  /** Whether the voltage between two nodes is decided by the circuit. */
  public boolean decided(String red, String black) {
    return volts.containsKey(red) && volts.containsKey(black) && islands.connected(red, black);
  }

  /**
   * Voltage of {@code red} against {@code black}, with nothing connected there.
   *
   * @throws IllegalStateException where {@link #decided} is false
   */
  public Phasor volts(String red, String black) {
    if (!decided(red, black)) {
      throw new IllegalStateException("nothing decides the voltage from " + red + " to " + black);
    }
    return volts.get(red).minus(volts.get(black));
  }

  public Phasor volts(String node) {
    return volts(node, Netlist.GROUND);
  }

  /** Current through an element from its first end to its second; of a transformer, its secondary's. */
  public Phasor amps(String name) {
    Phasor unknown = amps.get(name);
    return unknown != null ? unknown : branchAmps(name);
  }

  private Phasor branchAmps(String name) {
    for (Element element : netlist.elements()) {
      if (element.name().equals(name) && element instanceof Element.Branch b) {
        return volts.get(b.a()).minus(volts.get(b.b())).over(b.impedance(netlist.hertz()));
      }
    }
    throw new IllegalArgumentException("no current is known for " + name);
  }
}
