package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.ConeOfInfluence;
import rungbook.circuit.sequence.HoldingCircuits;
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

  /** Positions of the controls that one fault is looked for in, where all combinations together are too many. */
  private static final int MOST_POSITIONS = 4_096;

  /** The least that a display shows: a digit of the last place, and a thousandth of the reading. */
  private static final double DIGIT = 1e-3;

  private final Vocabulary words;
  private final Dictionary dictionary;
  private final BitSet hidden = new BitSet();
  private final Map<CircuitState, BitSet> positions = new LinkedHashMap<>();
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
    boolean complete = search.findPositions()
        && search.look(List.of(MeterFunction.VOLTS), false, Stream.of(UnaryOperator.identity()))
        && search.look(List.of(MeterFunction.VOLTS, MeterFunction.AMPS), true, search.panels(false))
        && search.look(List.of(MeterFunction.OHMS, MeterFunction.MICROFARADS), true, search.panels(true))
        && search.lookOnWalks();
    return complete ? search.hidden.stream().mapToObj(number -> system.faults().get(number - 1)).toList() : List.of();
  }

  /**
   * Every combination of positions for every fault, or, where that would take too long, for each fault those of the
   * controls that it depends on; false if these are too many too.
   */
  private boolean findPositions() {
    CircuitState start = CircuitState.start(words);
    if (CircuitState.positionCount(words.controls().values()) * (1.0 + hidden.cardinality()) <= MOST_SOLUTIONS) {
      start.everyPosition(words).forEach(state -> positions.put(state, (BitSet) hidden.clone()));
      return true;
    }
    var cone = new ConeOfInfluence(dictionary.network());
    return hidden.stream().allMatch(number -> {
      ControlPositions own = ControlPositions.of(start, cone.of(dictionary.fault(number)));
      for (int i = 0; i < Math.min(own.count(), MOST_POSITIONS); i++) {
        positions.computeIfAbsent(own.state(i), state -> new BitSet()).set(number);
      }
      return own.count() <= MOST_POSITIONS && positions.size() <= MOST_SOLUTIONS;
    });
  }

  /** What a seal-in contact or a lockout does may show only where one position comes after another. */
  private boolean lookOnWalks() {
    if (hidden.isEmpty() || !HoldingCircuits.anyIn(dictionary.network())) {
      return true;
    }
    List<Probe> probes = probes(List.of(MeterFunction.VOLTS, MeterFunction.AMPS), true);
    return positions.entrySet().stream().allMatch(from -> positions.entrySet().stream().allMatch(to -> {
      var both = (BitSet) from.getValue().clone();
      both.and(to.getValue());
      return look(probes, to.getKey().from(from.getKey(), Set.of()), both);
    }));
  }

  /** Takes out what shows in one of these states; false when the search would take too long. */
  private boolean look(List<MeterFunction> meters, boolean isBetweenAll, Stream<UnaryOperator<CircuitState>> changes) {
    if (hidden.isEmpty()) {
      return true;
    }
    List<Probe> probes = probes(meters, isBetweenAll);
    return probes.size() <= MOST_PROBES && changes.allMatch(change -> positions.entrySet().stream()
        .allMatch(position -> look(probes, change.apply(position.getKey()), position.getValue())));
  }

  private boolean look(List<Probe> probes, CircuitState state, BitSet faults) {
    var cases = (BitSet) hidden.clone();
    cases.and(faults);
    if (cases.isEmpty()) {
      return true;
    }
    solutions += (1 + cases.cardinality()) * (int) state.andBefore().count();
    if (solutions > MOST_SOLUTIONS) {
      return false;
    }
    cases.set(0);
    ReadingTable table = dictionary.table(state, probes, cases);
    cases.stream().filter(number -> number > 0 && shows(table, number)).forEach(hidden::clear);
    return true;
  }

  /** Panels closed, open, and open with every interlock bypassed. */
  private Stream<UnaryOperator<CircuitState>> panels(boolean isDead) {
    UnaryOperator<CircuitState> power = state -> isDead ? isolated(state) : state;
    return Stream.<UnaryOperator<CircuitState>>of(state -> state, this::opened, state -> bypassed(opened(state)))
        .map(change -> state -> change.apply(power.apply(state)));
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
    words.quantities().keySet().forEach(quantity -> probes.add(Probe.outside(quantity)));
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
    return IntStream.range(0, table.sights().size())
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
