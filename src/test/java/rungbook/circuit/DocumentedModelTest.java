package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.Phasor;

/**
 * Readings of a small circuit rebuilt from the page on system texts alone: every constant of the netlist is a number
 * that the page prints, and the formulas are the page's.
 */
class DocumentedModelTest {

  private static final double HERTZ = documented("`N Hz` \\((\\d+)\\)");
  private static final double CONTACT_OHMS = documented("`contact` \\|.*`N ohm` \\(([\\d.]+)\\)");
  private static final double FUSE_OHMS = documented("`fuse` \\|.*`N ohm` \\(([\\d.]+)\\)");
  private static final double WIRE_OHMS = documented("`wire` \\| a pair \\| `N ohm` \\(([\\d.]+)\\)");
  private static final double MAGNETIZING = documented("`N % magnetizing` \\((\\d+)\\)") / 100;
  private static final double MAGNETIZING_FACTOR = documented("`N pf magnetizing` \\(([\\d.]+)\\)");
  private static final double REACTANCE = documented("`N X/R` \\(([\\d.]+)\\)");
  private static final double WINDINGS_FARADS = documented("`N pF between windings` \\((\\d+)\\)") * 1e-12;
  private static final double COIL_FACTOR = documented("`coil` \\|.*`N pf` \\(([\\d.]+)\\)");
  private static final double INRUSH_FACTOR = documented("`coil` \\|.*`N pf inrush` \\(([\\d.]+)\\)");
  private static final double METER_OHMS = documented("\\| (\\d+) MΩ and \\d+ pF in parallel") * 1e6;
  private static final double METER_FARADS = documented("\\| \\d+ MΩ and (\\d+) pF in parallel") * 1e-12;
  private static final double LOW_OHMS = documented("MΩ and \\d+ pF in parallel; (\\d+) kΩ") * 1e3;
  private static final double OHM_METERS = documented("ρ = ([\\d.]+) Ω·mm²/m") * 1e-6;
  private static final double PER_KELVIN = documented("\\+([\\d.]+) %/K") / 100;

  /** @param windings farads between the windings */
  private record Model(double contact, double fuse, double magnetizing, double magnetizingFactor, double reactance,
      double windings) {}

  private static final Model USUAL = new Model(CONTACT_OHMS, FUSE_OHMS, MAGNETIZING, MAGNETIZING_FACTOR, REACTANCE,
      WINDINGS_FARADS);

  private static final double FEET = 50;
  private static final double CELSIUS = 40;

  private static final String[] PARTS = {
      "supply: supply, 120 V, 0.05 ohm, L to N", "neutral bond: joint, N to ground", "common bond: joint, C to ground",
      "transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 10 % of full load, L to N, R to C",
      "fuse: fuse, 3 A, R to F", "contact: contact, F to Y at bench, closed when coil on or not coil on",
      "cable: cable, 18 AWG, 50 ft, 40 C, 30 pF/ft, 5 pF/ft to ground, bench to shed, conductor Y, conductor X",
      "lead: wire, Y at shed to K"};

  private static double documented(String pattern) {
    try {
      Matcher match = Pattern.compile(pattern).matcher(Files.readString(Path.of("docs/system-text.md")));
      if (!match.find()) {
        throw new IllegalStateException("the page does not say " + pattern);
      }
      return Double.parseDouble(match.group(1));
    } catch (IOException unread) {
      throw new IllegalStateException(unread);
    }
  }

  private static Trial trial(String coil) {
    String[] parts = Arrays.copyOf(PARTS, PARTS.length + 1);
    parts[PARTS.length] = coil;
    return Trial.of("L N R C F Y* X* K", parts);
  }

  /** d = 0.005 in · 92^((36 − AWG)/39), and ρ of the length at the temperature. */
  private static double conductorOhms() {
    double meters = 0.005 * 0.0254 * Math.pow(92, (36 - 18) / 39.0);
    return OHM_METERS * FEET * 0.3048 / (Math.PI * meters * meters / 4) * (1 + PER_KELVIN * (CELSIUS - 20));
  }

  private static Phasor impedance(double volts, double voltAmps, double powerFactor) {
    return Phasor.polar(volts * volts / voltAmps, Math.toDegrees(Math.acos(powerFactor)));
  }

  private static List<Element> circuit(Phasor coil, Model model) {
    double noLoad = 24 * 1.10;
    double ratio = noLoad / 120;
    double winding = (noLoad - 24) * 24 / 40;
    var elements = new ArrayList<Element>();
    elements.add(Element.voltage("source", "v", "0", Phasor.of(120)));
    elements.add(Element.resistor("supply", "v", "l", 0.05));
    elements.add(Element.resistor("primary", "l", "p", winding / 2 / (ratio * ratio)));
    elements.add(Element.impedance("magnetizing", "p", "0",
        impedance(120, 40 * model.magnetizing(), model.magnetizingFactor()), HERTZ));
    elements.add(new Element.Transformer("ideal", "p", "0", "t", "0", ratio));
    elements.add(Element.impedance("core", "t", "s", new Phasor(winding / 4, model.reactance() * winding / 4), HERTZ));
    elements.add(Element.capacitor("windings", "p", "s", model.windings()));
    elements.add(Element.resistor("secondary", "s", "r", winding / 4));
    elements.add(Element.resistor("fuse", "r", "f", model.fuse()));
    elements.add(Element.resistor("contact", "f", "y", model.contact()));
    elements.add(Element.resistor("Y", "y", "ys", conductorOhms()));
    elements.add(Element.resistor("X", "x", "xs", conductorOhms()));
    for (String end : new String[] {"", "s"}) {
      elements.add(Element.capacitor("between" + end, "y" + end, "x" + end, 30e-12 * FEET / 2));
      elements.add(Element.capacitor("y to ground" + end, "y" + end, "0", 5e-12 * FEET / 2));
      elements.add(Element.capacitor("x to ground" + end, "x" + end, "0", 5e-12 * FEET / 2));
    }
    elements.add(Element.resistor("lead", "ys", "k", WIRE_OHMS));
    elements.add(Element.impedance("coil", "k", "0", coil, HERTZ));
    return elements;
  }

  private static double read(Phasor coil, Model model, double meterOhms, String node) {
    var elements = new ArrayList<>(circuit(coil, model));
    elements.add(Element.resistor("meter", node, "0", meterOhms));
    elements.add(Element.capacitor("input", node, "0", METER_FARADS));
    return Solver.solve(new Netlist(HERTZ, elements)).volts(node, "0").magnitude();
  }

  /** The coil has pulled in: 24 V of 24 are more than 85 %. X is a spare conductor, and shows a stray voltage. */
  @ParameterizedTest
  @CsvSource({"R, r", "F, f", "Y, y", "K, k", "X, x"})
  void aVoltmeterReadsWhatThePageGives(String point, String node) {
    Trial trial = trial("coil: coil, 24 V, 7.5 VA, 30 VA inrush, K to C");
    Phasor coil = impedance(24, 7.5, COIL_FACTOR);
    assertEquals(read(coil, USUAL, METER_OHMS, node), trial.read("healthy", MeterFunction.VOLTS, point, "C"), 1e-7);
    assertEquals(read(coil, USUAL, LOW_OHMS, node),
        trial.read("healthy", MeterFunction.VOLTS_LOW_IMPEDANCE, point, "C"),
        1e-7);
  }

  /** A coil that needs more than there is stays on its inrush impedance. */
  @Test
  void aCoilThatDoesNotPullInDrawsItsInrush() {
    Trial trial = trial("coil: coil, 24 V, 7.5 VA, 30 VA inrush, K to C, picks up at 30 V");
    assertEquals(read(impedance(24, 30, INRUSH_FACTOR), USUAL, METER_OHMS, "k"), trial.volts("K", "C"), 1e-7);
  }

  /** Every constant that the page says can be stated replaces its default. */
  @ParameterizedTest
  @CsvSource({"R, r", "Y, y", "K, k", "X, x"})
  void statedConstantsReplaceTheDefaults(String point, String node) {
    String[] parts = Arrays.copyOf(PARTS, PARTS.length + 1);
    parts[3] += ", 20 % magnetizing, 0.5 pf magnetizing, 0.6 X/R, 300 pF between windings";
    parts[4] += ", 2 ohm";
    parts[5] += ", 1 ohm";
    parts[PARTS.length] = "coil: coil, 24 V, 7.5 VA, 0.5 pf, K to C";
    Model stated = new Model(1, 2, 0.2, 0.5, 0.6, 300e-12);
    assertEquals(read(impedance(24, 7.5, 0.5), stated, METER_OHMS, node),
        Trial.of("L N R C F Y* X* K", parts).volts(point, "C"), 1e-7);
  }
}
