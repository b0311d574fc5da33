package rungbook.circuit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import rungbook.circuit.network.Phasor;

/**
 * Runs ngspice (Debian package {@code ngspice}) on many netlists at once: as one deck of parts that only share ground.
 */
final class Spice {

  private final StringBuilder deck = new StringBuilder("rungbook\n.options noopac gmin=0\n");
  private final double hertz;
  private int copies;

  Spice(double hertz) {
    this.hertz = hertz;
  }

  /** Adds a netlist; gives the number under which its voltages come back. */
  int add(Netlist netlist) {
    int copy = copies++;
    String tail = "_" + copy;
    netlist.elements().forEach(element -> write(element, tail));
    var islands = Islands.of(netlist);
    var tied = new HashSet<String>();
    for (String node : netlist.nodes()) {
      if (islands.floating(node) && tied.add(islands.root(node))) {
        line("Rtie%s%s %s 0 1", node, tail, node + tail);
      }
    }
    return copy;
  }

  private void line(String format, Object... values) {
    deck.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  private static String node(String name, String tail) {
    return name.equals(Netlist.GROUND) ? "0" : name + tail;
  }

  private void write(Element element, String tail) {
    String name = element.name().replace(' ', '_') + tail;
    if (element instanceof Element.Branch b) {
      writeBranch(b, name, node(b.a(), tail), node(b.b(), tail));
    } else if (element instanceof Element.Voltage v) {
      line("V%s %s %s AC %s %s", name, node(v.plus(), tail), node(v.minus(), tail), v.volts().magnitude(),
          v.volts().degrees());
    } else if (element instanceof Element.Transformer t) {
      line("E%s i%s %s %s %s %s", name, name, node(t.secondaryB(), tail), node(t.primaryA(), tail),
          node(t.primaryB(), tail), t.ratio());
      line("Vi%s i%s %s AC 0", name, name, node(t.secondaryA(), tail));
      line("F%s %s %s Vi%s %s", name, node(t.primaryA(), tail), node(t.primaryB(), tail), name, t.ratio());
    } else {
      throw new IllegalArgumentException(element.name());
    }
  }

  private void writeBranch(Element.Branch b, String name, String from, String to) {
    boolean resistor = b.ohms() != 0;
    boolean inductor = b.henries() != 0;
    boolean capacitor = !Double.isInfinite(b.farads());
    String middle = resistor && (inductor || capacitor) ? "m" + name : to;
    if (resistor) {
      line("R%s %s %s %s", name, from, middle, b.ohms());
    }
    if (inductor) {
      line("L%s %s %s %s", name, resistor ? middle : from, to, b.henries());
    }
    if (capacitor) {
      line("C%s %s %s %s", name, resistor ? middle : from, to, b.farads());
    }
  }

  /** Every node voltage, by {@code node_copy}. */
  Map<String, Phasor> run() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("spice");
    Path in = folder.resolve("deck.cir");
    Path out = folder.resolve("deck.raw");
    String control = ".control\nset filetype=ascii\nac lin 1 %s %s\nwrite %s\nquit\n.endc\n.end\n";
    Files.writeString(in, deck + String.format(Locale.ROOT, control, hertz, hertz, out));
    Process process = new ProcessBuilder("ngspice", "-b", in.toString())
        .redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile()).start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("ngspice did not come back");
    }
    if (!Files.exists(out)) {
      throw new IOException("ngspice wrote nothing: " + Files.readString(folder.resolve("log")));
    }
    var volts = parse(Files.readAllLines(out));
    for (String file : List.of("deck.cir", "deck.raw", "log")) {
      Files.delete(folder.resolve(file));
    }
    Files.delete(folder);
    return volts;
  }

  /** An ASCII raw file: the variables' names, then one value a line. */
  private static Map<String, Phasor> parse(List<String> lines) {
    var names = lines.subList(lines.indexOf("Variables:") + 1, lines.indexOf("Values:"));
    var values = lines.subList(lines.indexOf("Values:") + 1, lines.size());
    var volts = new HashMap<String, Phasor>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i).strip().split("\\s+")[1];
      String value = values.get(i).strip();
      String[] parts = value.substring(value.lastIndexOf('\t') + 1).strip().split(",");
      volts.put(name.replaceAll("^v\\((.*)\\)$", "$1"),
          new Phasor(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])));
    }
    return volts;
  }
}
