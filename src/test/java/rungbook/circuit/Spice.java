package rungbook.circuit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import rungbook.circuit.network.Phasor;

/**
 * Runs ngspice (Debian package {@code ngspice}) on many netlists at once, as decks of parts that only share ground.
 */
final class Spice {

  private static final String HEAD = "rungbook\n.options noopac gmin=0\n";

  /** The time ngspice takes to read a deck grows faster than the deck. */
  private static final int COPIES_PER_DECK = 30;

  private final List<StringBuilder> decks = new ArrayList<>();
  private final double hertz;
  private int copies;

  Spice(double hertz) {
    this.hertz = hertz;
  }

  /** Adds a netlist; gives the number under which its voltages come back. */
  int add(Netlist netlist) {
    if (copies % COPIES_PER_DECK == 0) {
      decks.add(new StringBuilder(HEAD));
    }
    int copy = copies++;
    String tail = "_" + copy;
    netlist.elements().forEach(element -> write(element, tail));
    var islands = Islands.of(netlist);
    var tied = new HashSet<String>();
    for (String node : netlist.nodes()) {
      if (islands.floating(node) && tied.add(islands.root(node))) {
        line("Rtie" + node + tail, node + tail, "0", "1");
      }
    }
    return copy;
  }

  private void line(Object... words) {
    StringBuilder deck = decks.get(decks.size() - 1);
    for (Object word : words) {
      deck.append(word).append(' ');
    }
    deck.append('\n');
  }

  private static String node(String name, String tail) {
    return name.equals(Netlist.GROUND) ? "0" : name + tail;
  }

  private void write(Element element, String tail) {
    String name = element.name().replace(' ', '_') + tail;
    if (element instanceof Element.Branch b) {
      writeBranch(b, name, node(b.a(), tail), node(b.b(), tail));
    } else if (element instanceof Element.Voltage v) {
      line("V" + name, node(v.plus(), tail), node(v.minus(), tail), "AC", v.volts().magnitude(), v.volts().degrees());
    } else if (element instanceof Element.Transformer t) {
      String primaryA = node(t.primaryA(), tail);
      String primaryB = node(t.primaryB(), tail);
      line("E" + name, "i" + name, node(t.secondaryB(), tail), primaryA, primaryB, t.ratio());
      line("Vi" + name, "i" + name, node(t.secondaryA(), tail), "AC", 0);
      line("F" + name, primaryA, primaryB, "Vi" + name, t.ratio());
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
      line("R" + name, from, middle, b.ohms());
    }
    if (inductor) {
      line("L" + name, resistor ? middle : from, to, b.henries());
    }
    if (capacitor) {
      line("C" + name, resistor ? middle : from, to, b.farads());
    }
  }

  /** Every node voltage, by {@code node_copy}. */
  Map<String, Phasor> run() throws IOException, InterruptedException {
    var volts = new HashMap<String, Phasor>();
    Path folder = Files.createTempDirectory("spice");
    for (StringBuilder deck : decks) {
      volts.putAll(run(deck, folder));
    }
    Files.delete(folder);
    return volts;
  }

  private Map<String, Phasor> run(StringBuilder deck, Path folder) throws IOException, InterruptedException {
    Path in = folder.resolve("deck.cir");
    Path out = folder.resolve("deck.raw");
    Path log = folder.resolve("log");
    String control = ".control\nset filetype=ascii\nac lin 1 %s %s\nwrite %s\nquit\n.endc\n.end\n";
    Files.writeString(in, deck + String.format(Locale.ROOT, control, hertz, hertz, out));
    Process process = new ProcessBuilder("ngspice", "-b", in.toString())
        .redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("ngspice did not come back");
    }
    if (!Files.exists(out)) {
      throw new IOException("ngspice wrote nothing: " + Files.readString(log));
    }
    var volts = parse(Files.readAllLines(out));
    for (Path file : List.of(in, out, log)) {
      Files.delete(file);
    }
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
      volts.put(name.startsWith("v(") ? name.substring(2, name.length() - 1) : name,
          new Phasor(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])));
    }
    return volts;
  }
}
