package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.circuit.export.PageSolver;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.system.BenchSystem;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;

/**
 * The solver of a practice page against the program's own on random walks: timers, switches with manual reset, a relay
 * that holds itself, a fuse that is replaced.
 */
@Tag("browser")
class PageMemoryTest {

  private static final int WALKS = 12;
  private static final int STEPS = 14;
  private static final List<String> POINTS = List.of("a", "b", "d", "e", "f");
  private static final List<Integer> WAITS = List.of(1, 20, 30, 60, 300);

  private static final String BLOCKS = """
      ```controls
      call: off, on, at bench
      room: cool, hot, at bench
      start button: released, pressed, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      fuse: fuse, 3 A, L1 to F
      thermostat: contact, F to A, closed when call on
      rollout switch: switch, A to B, closed when room cool, manual reset
      purge: state, when call on, on after 30 s, off after 20 s
      short cycle: state, when not valve on, on after 5 min
      purge contact: contact, B to D, closed when purge on
      short cycle contact: contact, D to inside valve, closed when short cycle on or valve on
      valve: load, 24 V, 10 VA, inside valve to N
      start: contact, F to E, closed when start button pressed or relay on
      stop: contact, E to inside relay, closed when not purge on
      relay: coil, 24 V, 6 VA, inside relay to N
      ```

      ```sights
      flame: at bench, when valve on
      ```

      ```faults
      vent blocked: in vent, hold rollout switch open when valve on
      purge stuck: stop purge
      relay coil shorted: short relay
      button welded: hold start closed
      ```
      """;

  private static final String WALK = """
      const number = word => data.names.indexOf(word), all = words => Object.fromEntries(words.map(w => [number(w), true]));
      const node = point => data.variants[0].p.find(p => data.names[p[0]] === point)[2];
      const circuit = rungbook.circuit(data, 0, 0, arguments[0]);
      let settled = null;
      return arguments[1].map(s => {
        const state = { at: {}, off: {}, bypassed: {}, loose: {}, open: {}, replaced: all(s.replaced) };
        for (const control in s.at) state.at[number(control)] = number(s.at[control]);
        settled = circuit.settle(state, settled, all(s.renewed), s.seconds);
        return arguments[2].map(point => {
          const value = circuit.read(settled, 'volts', node(point), 0);
          return typeof value === 'number' ? value.toFixed(6) : value;
        }).concat(circuit.seen(settled).map(key => data.names[key])).join(' ');
      });""";

  @TempDir
  private Path folder;

  /** A step of a walk: the state, what was renewed before it, and how long somebody waited. */
  private record Walked(CircuitState state, Set<String> renewed, int seconds) {

    Map<String, Object> json() {
      return Map.of("at", state.positions(), "replaced", List.copyOf(state.replaced()), "renewed", List.copyOf(renewed),
          "seconds", seconds);
    }
  }

  @Test
  void everyWalkIsTheSame() throws IOException {
    var read = BenchSystem.read("L1 N A B D E F", BLOCKS);
    assertEquals(List.of(), read.problems());
    ControlSystem system = read.system();
    Dictionary dictionary = Dictionary.of(system, new Samples(List.of(Draw.MIDDLE)));
    Path page = Files.writeString(folder.resolve("page.html"),
        PageSolver.page(new SystemVariants(system, List.of()), new Samples(List.of(Draw.MIDDLE)), ""));
    var different = new HashSet<String>();
    try (Browser browser = Browser.start()) {
      browser.open(page);
      for (int walk = 0; walk < WALKS; walk++) {
        List<Walked> walked = walk(system, new Random(walk));
        for (int number = 0; number < dictionary.cases().size(); number++) {
          List<String> ours = shown(dictionary, walked, number);
          assertEquals(ours, browser.run(WALK, number - 1, walked.stream().map(Walked::json).toList(), POINTS),
              dictionary.cases().get(number) + " on walk " + walk + ": " + walked);
          different.addAll(ours);
        }
      }
    }
    assertTrue(different.size() > 20, different.toString());
  }

  private static List<Walked> walk(ControlSystem system, Random random) {
    CircuitState state = CircuitState.start(system.vocabulary());
    var walked = new ArrayList<>(List.of(new Walked(state, Set.of(), 0)));
    for (int i = 0; i < STEPS; i++) {
      Walked next = step(state, random);
      walked.add(next);
      state = next.state();
    }
    return walked;
  }

  private static Walked step(CircuitState state, Random random) {
    return switch (random.nextInt(6)) {
      case 0, 1 -> {
        int seconds = WAITS.get(random.nextInt(WAITS.size()));
        yield new Walked(state.waited(seconds), Set.of(), seconds);
      }
      case 2 -> {
        String part = random.nextBoolean() ? "fuse" : "rollout switch";
        yield new Walked(state.replace(part).from(state, Set.of(part)), Set.of(part), 0);
      }
      case 3 -> moved(state, "room", random.nextInt(4) == 0 ? "hot" : "cool");
      case 4 -> moved(state, "call", random.nextInt(4) == 0 ? "off" : "on");
      default -> moved(state, "start button", random.nextBoolean() ? "pressed" : "released");
    };
  }

  private static Walked moved(CircuitState state, String control, String position) {
    return new Walked(state.set(control, position).from(state, Set.of()), Set.of(), 0);
  }

  private static List<String> shown(Dictionary dictionary, List<Walked> walked, int number) {
    return walked.stream().map(one -> shown(dictionary, one.state(), number)).toList();
  }

  private static String shown(Dictionary dictionary, CircuitState state, int number) {
    List<Probe> probes = POINTS.stream()
        .map(point -> Leads.at("bench", MeterFunction.VOLTS, point, "ground")).toList();
    ReadingTable table = Whole.table(dictionary, state, probes);
    var shown = new ArrayList<String>();
    for (int p = 0; p < probes.size(); p++) {
      double volts = table.reading(number, 0, p);
      shown.add(volts == Reading.UNSTEADY ? "unsteady" : volts == Reading.FLOATING ? "floating" : fixed(volts));
    }
    IntStream.range(0, table.sights().size()).filter(sight -> table.seen(number, 0, sight))
        .forEach(sight -> shown.add(table.sights().get(sight)));
    return String.join(" ", shown);
  }

  private static String fixed(double volts) {
    return BigDecimal.valueOf(volts).setScale(6, RoundingMode.HALF_UP).toPlainString();
  }
}
