package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.Terminal;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;

/** What each effect does to each kind of part that can have it, by a netlist drawn by hand and solved by ngspice. */
class FaultEffectsTest {

  private static final double RELATIVE = 1e-6;
  private static final double LEAST_VOLTS = 1e-6;

  private static final String BENCH = """
      ```locations
      bench: start
      far: walk 1 min
      ```

      ```points
      L1: at bench
      N: at bench
      B: at bench
      S: at bench
      X: at bench
      H: at bench
      T: at bench
      C: at bench
      R: at bench, far
      Y: at bench, far
      K: at bench
      ground: at bench, far
      ```

      ```controls
      call: off, on, at far
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      neutral bond: joint, N to ground at bench
      control bond: joint, C to ground at bench
      breaker: breaker, 15 A, L1 to B
      isolator: switch, B to S
      lamp wire: wire, S to X
      pole: contact, X to H, closed when running
      heater: heater, 120 V, 500 W, H to N
      capacitor: capacitor, S to N, 10 uF
      transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 10 % of full load, S to N, T to C
      fuse: fuse, 3 A, T to R at bench
      cable: cable, 18 AWG, 50 ft, 20 C, 30 pF/ft, 5 pF/ft to ground, bench to far, conductor R, conductor Y
      call contact: contact, R at far to Y at far, closed when call on
      coil wire: wire, Y at bench to K
      coil: coil, 24 V, 7.5 VA, 12 ohm, K to C
      running: state, when coil on
      ```
      """;

  /** Points by the sketch's nodes. */
  private static final Map<String, Terminal> NODES = Map.ofEntries(node("l1", "l1", "bench"), node("b", "b", "bench"),
      node("s", "s", "bench"), node("x", "x", "bench"), node("h", "h", "bench"), node("t", "t", "bench"),
      node("r", "r", "bench"),
      node("rf", "r", "far"), node("y", "y", "bench"), node("yf", "y", "far"), node("k", "k", "bench"));

  /** Of ngspice. */
  private static final Map<Metered, Double> READINGS = new HashMap<>();

  /** A meter from a node of a row's drawing to ground. */
  private record Metered(String effect, boolean call, String node) {}

  private static Map.Entry<String, Terminal> node(String node, String point, String place) {
    return Map.entry(node, new Terminal(point, place));
  }

  /** When the pole is closed, beside the call. */
  private enum Pole { WITH_CALL, ALWAYS, NEVER }

  /**
   * @param drawn the sketch with the fault, with the call or without
   * @param call when the contact of the call is closed; null as the call says
   */
  private record Row(String effect, String kind, BiFunction<Sketch, Boolean, Sketch> drawn, Pole pole, Boolean call) {
    @Override
    public String toString() {
      return effect;
    }
  }

  private static Row row(String effect, String kind, UnaryOperator<Sketch> drawn) {
    return new Row(effect, kind, (s, call) -> drawn.apply(s), Pole.WITH_CALL, null);
  }

  private static Row dark(String effect, String kind, UnaryOperator<Sketch> drawn) {
    return new Row(effect, kind, (s, call) -> drawn.apply(s), Pole.NEVER, null);
  }

  static Stream<Row> rows() {
    return Stream.concat(ofParts(), betweenPoints());
  }

  /** Where a range is given, the middle of it is the reading of {@link Draw#MIDDLE}. */
  private static Stream<Row> betweenPoints() {
    return Stream.of(
        row("short R at far to ground at far through 500 to 1500 ohm", "points", s -> s.join("rf", "0", 1000)),
        row("short S to H through 200 ohm", "points", s -> s.join("s", "h", 200)),
        dark("short R at far to ground at far", "points", s -> s.join("rf", "0").open("fuse")));
  }

  private static Stream<Row> ofParts() {
    return Stream.of(
        dark("open supply", "supply", s -> s.open("supply")),
        dark("short supply", "supply", s -> s.join("l1", "0")),
        row("raise supply by 1 ohm", "supply", s -> s.raise("supply", 1)),
        dark("lower supply to 90 to 90 V", "supply", s -> s.volts(90)),
        dark("open breaker", "breaker", s -> s.open("breaker")),
        row("short breaker", "breaker", s -> s.join("l1", "b")),
        row("raise breaker by 0.5 ohm", "breaker", s -> s.raise("breaker", 0.5)),
        dark("open fuse", "fuse", s -> s.open("fuse")),
        row("short fuse", "fuse", s -> s.join("t", "r")),
        row("raise fuse by 5 ohm", "fuse", s -> s.raise("fuse", 5)),
        dark("open isolator", "switch", s -> s.open("isolator")),
        row("short isolator", "switch", s -> s.join("b", "s")),
        row("raise isolator by 1 ohm", "switch", s -> s.raise("isolator", 1)),
        dark("hold isolator open", "switch", s -> s.open("isolator")),
        row("hold isolator closed", "switch", s -> s),
        dark("open call contact", "contact", s -> s.open("call contact")),
        new Row("short call contact", "contact", (s, call) -> s.join("rf", "yf"), Pole.ALWAYS, null),
        row("raise call contact by 2 ohm", "contact", s -> s.raise("call contact", 2)),
        new Row("hold call contact open", "contact", (s, call) -> s, Pole.NEVER, false),
        new Row("hold call contact closed", "contact", (s, call) -> s, Pole.ALWAYS, true),
        dark("open R cable", "conductor", s -> s.open("R cable")),
        row("raise Y cable by 2 ohm", "conductor", s -> s.raise("Y cable", 2)),
        row("cross R cable with Y cable", "conductor", s -> s.cross("R cable", "Y cable")),
        row("open lamp wire", "wire", s -> s.open("lamp wire")),
        row("raise lamp wire by 2 to 6 ohm", "wire", s -> s.raise("lamp wire", 4)),
        new Row("cross lamp wire with coil wire", "wire", (s, call) -> s.cross("lamp wire", "coil wire"), Pole.ALWAYS,
            null),
        dark("open transformer primary", "transformer", s -> s.open("primary")),
        dark("short transformer primary", "transformer", s -> s.join("s", "0").open("breaker")),
        row("raise transformer primary by 5 ohm", "transformer", s -> s.raise("primary", 5)),
        dark("open transformer secondary", "transformer", s -> s.open("secondary")),
        dark("short transformer secondary", "transformer", s -> s.join("t", "0")),
        row("raise transformer secondary by 1 ohm", "transformer", s -> s.raise("secondary", 1)),
        row("weaken transformer 3 times", "transformer", s -> s.weaken(3)),
        row("weaken transformer 2 to 6 times", "transformer", s -> s.weaken(4)),
        dark("tap transformer for 208 V", "transformer", s -> s.tap(208)),
        dark("open coil", "coil", s -> s.open("coil")),
        dark("short coil", "coil", s -> s.join("k", "0").open("fuse")),
        row("raise coil by 2 ohm", "coil", s -> s.raise("coil", 2)),
        row("short coil through 30 to 50 ohm", "coil", s -> s.join("k", "0", 40)),
        dark("stop coil", "coil", s -> s),
        new Row("overload coil to 120 to 160 %", "coil", (s, call) -> call ? s.overload("coil", 1.4) : s,
            Pole.WITH_CALL, null),
        dark("stiffen coil to 26 to 28 V", "coil", s -> s),
        row("stiffen coil to 20 to 22 V", "coil", s -> s),
        row("open heater", "heater", s -> s.open("heater")),
        dark("short heater", "heater", s -> s.join("h", "0").open("breaker")),
        row("raise heater by 5 ohm", "heater", s -> s.raise("heater", 5)),
        row("short heater through 50 ohm", "heater", s -> s.join("h", "0", 50)),
        row("stop heater", "heater", s -> s),
        row("overload heater to 150 %", "heater", s -> s.overload("heater", 1.5)),
        row("stiffen heater to 130 V", "heater", s -> s),
        row("open capacitor", "capacitor", s -> s.open("capacitor")),
        dark("short capacitor", "capacitor", s -> s.join("s", "0").open("breaker")),
        row("weaken capacitor to 50 to 80 %", "capacitor", s -> s.capacitor(6.5)),
        row("raise capacitor by 5 ohm", "capacitor", s -> s.raise("capacitor", 5)),
        dark("stop running", "state", s -> s));
  }

  /** Of all rows together: to start ngspice takes longer than to solve one of them. */
  @BeforeAll
  static void solveTheDrawings() throws Exception {
    var spice = new Spice(new Sketch().netlist().hertz());
    var copies = new HashMap<Metered, Integer>();
    for (Row row : rows().toList()) {
      for (boolean call : new boolean[] {false, true}) {
        Netlist drawn = drawn(row, call);
        NODES.keySet().stream().filter(drawn.nodes()::contains).forEach(
            node -> copies.put(new Metered(row.effect(), call, node), spice.add(metered(drawn, node))));
      }
    }
    Map<String, Phasor> volts = spice.run();
    copies.forEach((one, copy) -> READINGS.put(one, volts.get(one.node() + "_" + copy).magnitude()));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void readsAsTheCircuitDrawnByHand(Row row) {
    assertEquals(List.of(), read(row.effect()).problems().stream().map(Systems::text).toList());
    var dictionary = Dictionary.of(read(row.effect()).system(), new Samples(List.of(Draw.MIDDLE)));
    for (boolean call : new boolean[] {false, true}) {
      var state = CircuitState.start(dictionary.network().system().vocabulary()).set("call", call ? "on" : "off");
      List<Probe> probes = NODES.values().stream().map(FaultEffectsTest::toGround).toList();
      ReadingTable table = Whole.table(dictionary, state, probes);
      NODES.forEach((node, terminal) -> {
        double shown = table.reading(1, 0, table.probes().indexOf(toGround(terminal)));
        double expected = READINGS.getOrDefault(new Metered(row.effect(), call, node), Reading.FLOATING);
        double allowed = Math.max(LEAST_VOLTS, RELATIVE * Math.abs(expected));
        assertEquals(expected, shown, allowed, () -> row + ", call " + call + ", " + terminal);
      });
    }
  }

  private static Netlist drawn(Row row, boolean call) {
    boolean pole = row.pole() == Pole.ALWAYS || row.pole() == Pole.WITH_CALL && call;
    boolean contact = row.call() == null ? call : row.call();
    Sketch sketch = row.drawn().apply(new Sketch(), call);
    Sketch poled = pole ? sketch : sketch.open("pole");
    return (contact || row.effect().equals("open call contact") ? poled : poled.open("call contact")).netlist();
  }

  private static Probe toGround(Terminal terminal) {
    return Leads.with(MeterFunction.VOLTS, terminal, new Terminal("ground", terminal.place()));
  }

  private static Netlist metered(Netlist netlist, String node) {
    return netlist.with(Element.resistor("meter", node, "0", 10e6))
        .with(Element.capacitor("input", node, "0", 100e-12));
  }

  /** The far end of an open conductor beside a live one: the more the meter loads it, the less it shows. */
  @ParameterizedTest
  @ValueSource(doubles = {10e6, 1e6, 20e3, 3e3})
  void aStrayReadingIsWhatTheMetersLoadLeavesOfIt(double inputOhms) throws Exception {
    var dictionary = Dictionary.of(read("open Y cable").system(), new Samples(List.of(Draw.MIDDLE)));
    Probe probe = new Probe(MeterFunction.VOLTS, inputOhms, new Terminal("y", "far"), new Terminal("ground", "far"));
    var state = CircuitState.start(dictionary.network().system().vocabulary());
    double shown = Whole.table(dictionary, state, List.of(probe)).reading(1, 0, 0);
    Netlist open = new Sketch().open("Y cable").open("pole").open("call contact").netlist();
    var spice = new Spice(open.hertz());
    spice.add(open.with(Element.resistor("meter", "yf", "0", inputOhms))
        .with(Element.capacitor("input", "yf", "0", 100e-12)));
    assertEquals(spice.run().get("yf_0").magnitude(), shown, RELATIVE * shown);
    assertTrue(shown > 0 && (inputOhms > 50e3 || shown < 0.2), shown + " V");
  }

  /** Every effect that the reader accepts of a part of the bench is in the table above, so that none goes unproved. */
  @Test
  void everyEffectThatIsAcceptedIsInTheTable() {
    ControlSystem bench = read("open coil").system();
    var accepted = new TreeSet<String>();
    for (String form : List.of("open %s", "short %s", "raise %s by 1 ohm", "hold %s open", "stop %s",
        "cross %s with R cable",
        "cross %s with coil wire", "weaken %s 2 times", "weaken %s to 50 to 80 %%", "overload %s to 150 %%",
        "stiffen %s to 20 V", "short %s through 5 ohm", "tap %s for 208 V", "lower %s to 90 to 91 V")) {
      bench.vocabulary().parts()
          .forEach((key, part) -> branches(bench, key)
              .filter(branch -> read(String.format(form, branch)).problems().isEmpty())
              .forEach(branch -> accepted.add(form.split(" ")[0] + " " + part.kind())));
    }
    accepted.remove("cross cable");
    var covered = ofParts().map(row -> row.effect().split(" ")[0] + " " + row.kind())
        .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(covered, accepted);
    assertTrue(covered.size() > 30);
  }

  private static Stream<String> branches(ControlSystem bench, String key) {
    var branches = bench.part(key).map(part -> part.branches().stream().map(branch -> branch.key()))
        .orElse(Stream.empty());
    return bench.vocabulary().isKind(key, "cable") ? Stream.empty() : Stream.concat(Stream.of(key), branches);
  }

  private static SystemReader.Read read(String effect) {
    String text = BENCH + "\n```faults\nfault: " + effect + ", likelihood 1\n```\n";
    return BaseSystem.read("bench", DocumentReader.read(new Source("bench.md", "---\ntitle: Bench\n---\n\n" + text)));
  }
}
