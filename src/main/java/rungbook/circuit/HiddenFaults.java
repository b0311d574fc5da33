package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/**
 * Finds the faults that change no reading and no sight, in any position of the controls, with the power on or off and
 * the panels closed or open. Nothing is disconnected, every tolerance is at its middle, and a
 * fault with a range is at either end of it.
 *
 * <p>Most faults show in a voltage to ground. Only those that do not are looked for between every two points.
 */
public final class HiddenFaults {

  /** Cases that are solved, times states; a system that needs more is not searched any further. */
  private static final int MOST_SOLUTIONS = 20_000;

  private static final int MOST_PROBES = 20_000;

  /** The least that a display shows: a digit of the last place, and a thousandth of the reading. */
  private static final double DIGIT = 1e-3;

  private final Vocabulary words;
  private final Dictionary dictionary;
  private final BitSet hidden = new BitSet();
  private int solutions;

  private HiddenFaults(ControlSystem system) {
    words = system.vocabulary();
    dictionary = Dictionary.of(system, Samples.faultEnds());
    hidden.set(1, dictionary.cases().size());
  }

  /**
   * In the system's order; none when the search would take too long.
   *
   * @param system one that was read without problems
   */
  public static List<Fault> of(ControlSystem system) {
    var search = new HiddenFaults(system);
    boolean complete = search.look(List.of(MeterFunction.VOLTS), false, search.positions(UnaryOperator.identity()))
        && search.look(List.of(MeterFunction.VOLTS, MeterFunction.AMPS), true, search.panels(false))
        && search.look(List.of(MeterFunction.OHMS, MeterFunction.MICROFARADS), true, search.panels(true));
    return complete ? search.hidden.stream().mapToObj(number -> system.faults().get(number - 1)).toList() : List.of();
  }

  /** Takes out what shows in one of these states; false when the search would take too long. */
  private boolean look(List<MeterFunction> meters, boolean isBetweenAll, Stream<CircuitState> states) {
    if (hidden.isEmpty()) {
      return true;
    }
    List<Probe> probes = probes(meters, isBetweenAll);
    return probes.size() <= MOST_PROBES && states.allMatch(state -> look(probes, state));
  }

  private boolean look(List<Probe> probes, CircuitState state) {
    if (hidden.isEmpty()) {
      return true;
    }
    solutions += 1 + hidden.cardinality();
    if (solutions > MOST_SOLUTIONS) {
      return false;
    }
    var cases = (BitSet) hidden.clone();
    cases.set(0);
    ReadingTable table = dictionary.table(state, probes, cases);
    hidden.stream().filter(number -> shows(table, number)).forEach(cases::clear);
    hidden.and(cases);
    return true;
  }

  private Stream<CircuitState> positions(UnaryOperator<CircuitState> change) {
    return CircuitState.start(words).everyPosition(words).stream().map(change);
  }

  /** Panels closed, open, and open with every interlock bypassed. */
  private Stream<CircuitState> panels(boolean isDead) {
    UnaryOperator<CircuitState> power = state -> isDead ? isolated(state) : state;
    return Stream.<UnaryOperator<CircuitState>>of(state -> state, this::opened, state -> bypassed(opened(state)))
        .flatMap(change -> positions(state -> change.apply(power.apply(state))));
  }

  private CircuitState isolated(CircuitState state) {
    CircuitState off = state;
    for (String isolator : words.controls(Vocabulary.Role.ISOLATOR)) {
      off = off.isolate(isolator);
    }
    return off;
  }

  private CircuitState opened(CircuitState state) {
    CircuitState open = state;
    for (String panel : words.panels()) {
      open = open.open(panel);
    }
    return open;
  }

  private CircuitState bypassed(CircuitState state) {
    CircuitState bypassed = state;
    for (String interlock : words.controls(Vocabulary.Role.INTERLOCK)) {
      bypassed = bypassed.bypass(interlock);
    }
    return bypassed;
  }

  /** @param isBetweenAll whether between every two points of a place, and not only to ground */
  private List<Probe> probes(List<MeterFunction> meters, boolean isBetweenAll) {
    var probes = new ArrayList<Probe>();
    for (String place : words.locations().keySet()) {
      List<Terminal> terminals = words.points().entrySet().stream()
          .filter(point -> point.getValue().locations().contains(place))
          .map(point -> new Terminal(point.getKey(), place))
          .sorted((a, b) -> a.point().compareTo(b.point())).toList();
      for (MeterFunction meter : meters) {
        add(meter, terminals, new Terminal(Terminal.GROUND, place), isBetweenAll, probes);
      }
    }
    return probes;
  }

  private static void add(MeterFunction meter, List<Terminal> terminals, Terminal ground, boolean isBetweenAll,
      List<Probe> probes) {
    for (int i = 0; i < terminals.size() && probes.size() <= MOST_PROBES; i++) {
      Terminal red = terminals.get(i);
      if (meter == MeterFunction.AMPS) {
        probes.add(new Probe(meter, meter.usualOhms(), red, red));
      } else {
        probes.add(new Probe(meter, meter.usualOhms(), red, ground));
        (isBetweenAll ? terminals.subList(i + 1, terminals.size()) : List.<Terminal>of())
            .forEach(black -> probes.add(new Probe(meter, meter.usualOhms(), red, black)));
      }
    }
  }

  private static boolean shows(ReadingTable table, int number) {
    return IntStream.range(0, table.samples()).anyMatch(sample -> shows(table, number, sample));
  }

  private static boolean shows(ReadingTable table, int number, int sample) {
    for (int p = 0; p < table.probes().size(); p++) {
      if (differs(table.reading(0, sample, p), table.reading(number, sample, p))) {
        return true;
      }
    }
    return table.sights().stream()
        .anyMatch(sight -> table.seen(0, sample, sight) != table.seen(number, sample, sight));
  }

  /**
   * Two readings, coded as in {@link Reading}: a number against none, or two numbers that a display tells apart.
   */
  private static boolean differs(double one, double other) {
    if (!Reading.isNumber(one) || !Reading.isNumber(other)) {
      return one != other;
    }
    return Math.abs(one - other) > DIGIT * Math.max(1, Math.max(one, other));
  }
}
