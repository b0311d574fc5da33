package rungbook.circuit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rungbook.circuit.network.Phasor;

/** A circuit of linear elements at one frequency, in hertz. */
public record Netlist(double hertz, List<Element> elements) {

  /** The node every other voltage is counted from. */
  public static final String GROUND = "0";

  public Netlist {
    elements = List.copyOf(elements);
  }

  public static Netlist of(double hertz, Element... elements) {
    return new Netlist(hertz, List.of(elements));
  }

  public Netlist with(Element element) {
    var more = new ArrayList<>(elements);
    more.add(element);
    return new Netlist(hertz, more);
  }

  /** The same circuit with every source zeroed: voltage sources shorted, current sources open. */
  public Netlist withoutSources() {
    var quiet = new ArrayList<Element>();
    for (Element element : elements) {
      if (element instanceof Element.Voltage v) {
        quiet.add(Element.voltage(v.name(), v.plus(), v.minus(), Phasor.ZERO));
      } else if (!(element instanceof Element.Current)) {
        quiet.add(element);
      }
    }
    return new Netlist(hertz, quiet);
  }

  /** Every node but ground, in the order of first mention. */
  public Set<String> nodes() {
    var nodes = new LinkedHashSet<String>();
    elements.forEach(element -> nodes.addAll(ends(element)));
    nodes.remove(GROUND);
    return nodes;
  }

  static List<String> ends(Element element) {
    if (element instanceof Element.Branch b) {
      return List.of(b.a(), b.b());
    }
    if (element instanceof Element.Voltage v) {
      return List.of(v.plus(), v.minus());
    }
    if (element instanceof Element.Current c) {
      return List.of(c.from(), c.to());
    }
    var t = (Element.Transformer) element;
    return List.of(t.primaryA(), t.primaryB(), t.secondaryA(), t.secondaryB());
  }
}
