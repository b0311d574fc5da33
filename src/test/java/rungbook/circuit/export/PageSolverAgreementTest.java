package rungbook.circuit.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Base64;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.browser.Browser;
import rungbook.circuit.Dictionary;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.ReadingTable;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.library.ShortRun;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.system.reader.VariantsReader;

/**
 * The solver of a practice page against the program's own: every variant of the shipped systems, every fault and pair
 * of faults, every position of the controls with the power on, on with every panel open and every interlock bypassed,
 * and off, every two points of a place on every dial, to the last digit of the display. All of it is compared with
 * {@code -Drungbook.whole=true}, which takes half an hour; otherwise the base in three states and every third variant
 * in one, another in each, and with {@code -Drungbook.short=true} every sixth variant.
 */
@Tag("browser")
@Tag("slow")
class PageSolverAgreementTest {

  private static final int INSTALLATIONS = 4;
  private static final int CASES_AT_ONCE = 8;
  private static final boolean IS_WHOLE = Boolean.getBoolean("rungbook.whole");
  private static final int STATES_OF_BASE = 3;
  private static final int STATES_OF_VARIANT = 1;

  /** A reading of half a digit, such as 0.05 V at 0.1 V, is rounded by the last bit of a double. */
  private static final double MOST_TIES = 1e-4;

  @TempDir
  private Path folder;

  private long ties;

  @ParameterizedTest
  @ValueSource(strings = {"fan-coil-electric-heat", "heat-pump", "split-cooling-gas-furnace"})
  void everyFaultStateAndPairAgrees(String id) throws IOException {
    Path file = Path.of("shared/systems", id + ".md");
    SystemVariants systems = VariantsReader.systems(id,
        DocumentReader.read(new Source(file.toString(), Files.readString(file))));
    Samples samples = Samples.seeded(1, INSTALLATIONS);
    var page = folder.resolve("page.html");
    Files.writeString(page, PageSolver.page(systems, samples, COMPARE));
    try (Browser browser = Browser.start()) {
      browser.open(page);
      List<ControlSystem> all = systems.all().toList();
      long compared = 0;
      for (int variant = 0; variant < all.size(); variant += IS_WHOLE ? 1 : ShortRun.IS ? 6 : 3) {
        compared += agree(browser, all.get(variant), variant, samples);
      }
      assertTrue(compared > 100_000, compared + " compared");
      assertTrue(ties <= compared * MOST_TIES, ties + " half digits of " + compared);
    }
  }

  static final String COMPARE = """
      const SCALES = { volts: { high: 600, digit: .1, unit: 'V' }, low: { high: 600, digit: .1, unit: 'V' },
        ohms: { high: 4e7, digit: .1, unit: 'Ω' }, amps: { high: 400, digit: .01, unit: 'A' },
        microfarads: { high: 1000, digit: .1, unit: 'µF' } };
      const CODES = { '-1': 'floating', '-2': 'unsteady', '-3': 'live' };
      function set(words) {
        const all = {};
        words.forEach(word => { all[data.names.indexOf(word)] = true; });
        return all;
      }
      // the reading as it is shown, as one number; a word for none
      function shown(scale, value) {
        if (typeof value !== 'number') return value;
        if (value > scale.high) return Infinity;
        const rounded = rungbook.rounded(scale, 6000, value);
        return rounded.count * rounded.digit;
      }
      function compare(variant, installation, states, probes, first, count, text) {
        const expected = new Float64Array(Uint8Array.from(atob(text), c => c.charCodeAt(0)).buffer), differ = [], nodes = {};
        let next = 0, ties = 0;
        data.variants[variant].p.forEach(p => { nodes[data.names[p[0]] + '@' + data.names[p[1]]] = p[2]; });
        const node = lead => lead.startsWith('ground@') ? 0 : nodes[lead];
        const at = probes.map(p => [p[0], node(p[1]), node(p[2])]);
        const given = states.map(s => {
          const positions = {};
          for (const control in s.at) positions[data.names.indexOf(control)] = data.names.indexOf(s.at[control]);
          return { at: positions, off: set(s.off), bypassed: set(s.bypassed), open: set(s.open), loose: {}, replaced: {} };
        });
        for (let number = first - 1; number < first + count - 1; number++) {
          const circuit = rungbook.circuit(data, variant, installation, number), known = {};
          given.forEach((state, n) => {
            const settled = circuit.settle(state), key = settled.steady ? settled.modes.join('') : '';
            const readings = known[key] || (known[key] = at.map(p => {
              const value = circuit.read(settled, p[0], p[1], p[2]);
              return [value, shown(SCALES[p[0]], value)];
            }));
            probes.forEach((p, i) => {
              const wanted = expected[next++], right = wanted < 0 ? CODES[wanted] : wanted, value = readings[i][0];
              if (value === right || readings[i][1] === shown(SCALES[p[0]], right)) return;
              // half a digit: the last bit of a double decides
              if (Math.abs(value - right) <= 1e-12 * right) ties++;
              else if (differ.length < 20) differ.push([number, n, p.join(' '), value, right].join(' | '));
            });
          });
        }
        return [next, ties].concat(differ).map(String);
      }""";

  private long agree(Browser browser, ControlSystem system, int variant, Samples samples) {
    int installation = variant % INSTALLATIONS;
    var one = new Samples(List.of(samples.draws().get(installation)));
    Dictionary dictionary = Dictionary.of(system, one, CircuitVariant.cases(system));
    List<CircuitState> states = states(system.vocabulary(), variant);
    List<Probe> probes = probes(system, dictionary);
    List<String> sights = dictionary.table(states.get(0), List.of()).sights();
    Map<CircuitState, ReadingTable> tables = new LinkedHashMap<>();
    states.forEach(state -> tables.put(state, ReadingTable.empty(probes, sights, dictionary.cases().size(), 1)));
    long compared = 0;
    for (int first = 0; first < dictionary.cases().size(); first += CASES_AT_ONCE) {
      int count = Math.min(CASES_AT_ONCE, dictionary.cases().size() - first);
      var wanted = new BitSet();
      wanted.set(first, first + count);
      dictionary.solve(tables, wanted);
      List<?> found = (List<?>) browser.run("return compare(...arguments)", variant, installation,
          states.stream().map(PageSolverAgreementTest::state).toList(),
          probes.stream().map(PageSolverAgreementTest::probe).toList(), first, count,
          expected(tables, first, count, probes.size()));
      assertEquals(List.of(), found.subList(2, found.size()), () -> system.vocabulary().id() + " " + variant);
      compared += Long.parseLong((String) found.get(0));
      ties += Long.parseLong((String) found.get(1));
    }
    return compared;
  }

  static String expected(Map<CircuitState, ReadingTable> tables, int first, int count, int probes) {
    ByteBuffer bytes = ByteBuffer.allocate(tables.size() * count * probes * Double.BYTES)
        .order(ByteOrder.LITTLE_ENDIAN);
    for (int i = first; i < first + count; i++) {
      for (ReadingTable table : tables.values()) {
        for (int p = 0; p < probes; p++) {
          bytes.putDouble(table.reading(i, 0, p));
        }
      }
    }
    return Base64.getEncoder().encodeToString(bytes.array());
  }

  static List<CircuitState> states(Vocabulary words, int variant) {
    List<CircuitState> positions = CircuitState.start(words).everyPosition(words);
    var states = new ArrayList<CircuitState>();
    UnaryOperator<CircuitState> opened = state -> {
      CircuitState open = state;
      for (String panel : words.panels()) {
        open = open.open(panel);
      }
      for (String interlock : words.controls(Vocabulary.Role.INTERLOCK)) {
        open = open.bypass(interlock);
      }
      return open;
    };
    UnaryOperator<CircuitState> off = state -> {
      CircuitState dead = opened.apply(state);
      for (String isolator : words.controls(Vocabulary.Role.ISOLATOR)) {
        dead = dead.isolate(isolator);
      }
      return dead;
    };
    Stream.of(UnaryOperator.<CircuitState>identity(), opened, off)
        .forEach(change -> positions.forEach(state -> states.add(change.apply(state))));
    int step = IS_WHOLE ? 1 : variant == 0 ? states.size() / STATES_OF_BASE : states.size() / STATES_OF_VARIANT;
    return IntStream.range(0, states.size()).filter(i -> (i + variant) % step == 0).mapToObj(states::get).toList();
  }

  private static Map<String, Object> state(CircuitState state) {
    return Map.of("at", state.positions(), "off", List.copyOf(state.off()), "bypassed", List.copyOf(state.bypassed()),
        "open", List.copyOf(state.open()));
  }

  static List<Probe> probes(ControlSystem system, Dictionary dictionary) {
    var probes = new ArrayList<Probe>();
    for (String place : system.vocabulary().locations().keySet()) {
      List<Terminal> leads = Stream.concat(Stream.of(new Terminal(Terminal.GROUND, place)),
          system.vocabulary().points().entrySet().stream().filter(point -> point.getValue().locations().contains(place))
              .map(point -> new Terminal(point.getKey(), place)).filter(lead -> !lead.isGround()))
          .filter(lead -> dictionary.network().node(lead).isPresent()).toList();
      for (MeterFunction meter : EnumSet.complementOf(EnumSet.of(MeterFunction.OUTSIDE))) {
        for (int i = 0; i < leads.size(); i++) {
          for (int j = i + 1; j < leads.size() && meter != MeterFunction.AMPS; j++) {
            probes.add(new Probe(meter, meter.usualOhms(), leads.get(i), leads.get(j)));
          }
          if (meter == MeterFunction.AMPS && i > 0) {
            probes.add(new Probe(meter, meter.usualOhms(), leads.get(i), leads.get(i)));
          }
        }
      }
    }
    return probes;
  }

  static List<String> probe(Probe probe) {
    String dial = switch (probe.meter()) {
      case VOLTS -> "volts";
      case VOLTS_LOW_IMPEDANCE -> "low";
      case OHMS -> "ohms";
      case AMPS -> "amps";
      case MICROFARADS -> "microfarads";
      case OUTSIDE -> throw new IllegalArgumentException("no dial of the page");
    };
    return List.of(dial, lead(probe.red()), lead(probe.black()));
  }

  private static String lead(Terminal lead) {
    return lead.point() + "@" + lead.place();
  }
}
