package rungbook.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.Copper;
import rungbook.circuit.network.CopperTest;
import rungbook.circuit.network.Phasor;

/**
 * The test bench of {@link FaultEffectsTest} drawn by hand as a netlist, every number worked out from the text: it
 * shares nothing with the program but the element types.
 */
final class Sketch {

  private static final double HERTZ = 60;
  private static final double SECONDARY_OHMS = (24 * 1.10 - 24) / (40.0 / 24);

  private final Map<String, Element> branches = new LinkedHashMap<>();
  private double ratio = 24 * 1.10 / 120;
  private double coreOhms = SECONDARY_OHMS / 4;
  private int extras;

  Sketch() {
    put(Element.voltage("source", "v", "0", Phasor.of(120)));
    resistor("supply", "v", "l1", 0.05);
    resistor("breaker", "l1", "b", 0.02);
    resistor("isolator", "b", "s", 0.02);
    resistor("lamp wire", "s", "x", 0.02);
    resistor("pole", "x", "h", 0.02);
    resistor("heater", "h", "0", 120.0 * 120 / 500);
    put(Element.capacitor("capacitor", "s", "0", 10e-6));
    resistor("primary", "s", "tp", SECONDARY_OHMS / 2 / (ratio * ratio));
    put(Element.impedance("magnetizing", "tp", "0",
        Phasor.polar(120 * 120 / (40 * 0.15), Math.toDegrees(Math.acos(0.4))), HERTZ));
    put(Element.capacitor("windings", "tp", "tc", 100e-12));
    resistor("secondary", "tc", "t", SECONDARY_OHMS / 4);
    resistor("fuse", "t", "r", 0.02);
    resistor("R cable", "r", "rf", cableOhms());
    resistor("Y cable", "y", "yf", cableOhms());
    cableCapacitance();
    resistor("call contact", "rf", "yf", 0.02);
    resistor("coil wire", "y", "k", 0.02);
    double coil = 24 * 24 / 7.5;
    put(Element.impedance("coil", "k", "0", new Phasor(12, Math.sqrt(coil * coil - 12 * 12)), HERTZ));
  }

  /** 50 ft of 18 AWG at 20 °C: 6.385 ohm for a thousand feet (ASTM B258; see {@link CopperTest}). */
  private static double cableOhms() {
    return Copper.ohms(18, 50, 20);
  }

  private void cableCapacitance() {
    for (String end : new String[] {"", "f"}) {
      put(Element.capacitor("ry" + end, "r" + end, "y" + end, 0.5 * 30e-12 * 50));
      put(Element.capacitor("rg" + end, "r" + end, "0", 0.5 * 5e-12 * 50));
      put(Element.capacitor("yg" + end, "y" + end, "0", 0.5 * 5e-12 * 50));
    }
  }

  private void put(Element element) {
    branches.put(element.name(), element);
  }

  private void resistor(String name, String a, String b, double ohms) {
    put(Element.resistor(name, a, b, ohms));
  }

  Sketch open(String name) {
    if (branches.remove(name) == null) {
      throw new IllegalArgumentException(name);
    }
    return this;
  }

  /** A screw's resistance between two nodes. */
  Sketch join(String a, String b) {
    return join(a, b, 0.02);
  }

  Sketch join(String a, String b, double ohms) {
    resistor("extra" + extras++, a, b, ohms);
    return this;
  }

  /** The capacitor with this many microfarads. */
  Sketch capacitor(double microfarads) {
    put(Element.capacitor("capacitor", "s", "0", microfarads * 1e-6));
    return this;
  }

  /** A load that draws a multiple of its current. */
  Sketch overload(String name, double times) {
    var at = (Element.Branch) branches.get(name);
    put(new Element.Branch(name, at.a(), at.b(), at.ohms() / times, at.henries() / times, at.farads()));
    return this;
  }

  Sketch raise(String name, double ohms) {
    var at = (Element.Branch) branches.get(name);
    String middle = "m" + extras;
    put(new Element.Branch(name, at.a(), middle, at.ohms(), at.henries(), at.farads()));
    resistor("extra" + extras++, middle, at.b(), ohms);
    return this;
  }

  /** The far ends of two conductors changed over. */
  Sketch cross(String one, String other) {
    var p = (Element.Branch) branches.get(one);
    var q = (Element.Branch) branches.get(other);
    resistor(one, p.a(), q.b(), p.ohms());
    resistor(other, q.a(), p.b(), q.ohms());
    return this;
  }

  Sketch volts(double volts) {
    put(Element.voltage("source", "v", "0", Phasor.of(volts)));
    return this;
  }

  /** All of the added resistance is in the core: of 1 in all, a quarter there. */
  Sketch weaken(double times) {
    coreOhms = SECONDARY_OHMS * (times - 1 + 0.25);
    return this;
  }

  Sketch tap(double primaryVolts) {
    ratio = 24 * 1.10 / primaryVolts;
    return this;
  }

  Netlist netlist() {
    var elements = new ArrayList<>(branches.values());
    elements.add(new Element.Transformer("core", "tp", "0", "tl", "0", ratio));
    elements.add(Element.impedance("leakage", "tl", "tc", new Phasor(coreOhms, 0.3 * coreOhms), HERTZ));
    return new Netlist(HERTZ, List.copyOf(elements));
  }
}
