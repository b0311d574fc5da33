package rungbook.circuit;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.system.Condition;
import rungbook.system.ControlSystem.SightCondition;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Interval;
import rungbook.system.Names;
import rungbook.system.QuantityRanges;
import rungbook.text.Decimals;

/**
 * Finds sights of which the conditions of two values hold at once, and quantities of which two ranges do, in some
 * position of the controls, in the healthy system or with a fault. The panels are closed, every tolerance is at its
 * middle, and a fault with a range is at either end of it.
 */
public final class ValueClashes {

  /** Cases that are solved, times states; a system that needs more is not searched. */
  private static final int MOST_SOLUTIONS = 20_000;

  private final ControlSystem system;
  private final Dictionary dictionary;

  /**
   * The first clash of a sight or quantity: two of its values or ranges, in one state, of one case.
   *
   * @param key of the sight or quantity
   */
  public record Clash(String key, String first, String second, CircuitState state, String caseKey) {}

  /** What has one of several values at a time. */
  private record Valued(String key, List<Value> values) {}

  /** A value in words, and the sight that says when it is there. */
  private record Value(String words, SightCondition when) {

    String sight() {
      return Names.key(when.name());
    }
  }

  private ValueClashes(ControlSystem system) {
    this.system = system;
    this.dictionary = Dictionary.of(system, Samples.faultEnds());
  }

  /**
   * At most one of each sight or quantity, in the order of the text, the sights first.
   *
   * @param system one that was read without problems
   */
  public static List<Clash> of(ControlSystem system) {
    List<Valued> all = Stream.concat(sights(system), quantities(system)).filter(one -> one.values().size() > 1)
        .toList();
    double solutions = CircuitState.positionCount(system.vocabulary().controls().values())
        * (1.0 + system.faults().size());
    return all.isEmpty() || solutions > MOST_SOLUTIONS ? List.of()
        : new ValueClashes(asStated(system, all)).search(all);
  }

  private static Stream<Valued> sights(ControlSystem system) {
    Map<String, SightCondition> conditions = system.sights().stream()
        .filter(one -> !one.when().equals(Condition.never()))
        .collect(Collectors.toMap(one -> Names.key(one.name()), one -> one, (one, two) -> one));
    return system.vocabulary().sights().values().stream()
        .map(sight -> new Valued(sight.key(), IntStream.range(0, sight.values().size())
            .mapToObj(i -> Optional.ofNullable(conditions.get(sight.keys().get(i)))
                .map(when -> new Value(sight.values().get(i), when)))
            .flatMap(Optional::stream).toList()));
  }

  /** Each range is put to the circuit as one more sight; no sight of a text has a colon in its name. */
  private static Stream<Valued> quantities(ControlSystem system) {
    return system.quantities().stream().map(one -> new Valued(one.key(), IntStream.range(0, one.ranges().size())
        .mapToObj(i -> value(one, i, unit(one, system))).toList()));
  }

  private static String unit(QuantityRanges quantity, ControlSystem system) {
    return Objects.requireNonNull(system.vocabulary().quantities().get(quantity.key())).kind().unit();
  }

  private static Value value(QuantityRanges quantity, int number, String unit) {
    QuantityRanges.Ranged one = quantity.ranges().get(number);
    return new Value(words(one.range()) + " " + unit,
        new SightCondition(quantity.key() + ":" + number, one.when()));
  }

  private static String words(Interval range) {
    String low = Decimals.shortest(range.low(), 3);
    return range.low() == range.high() ? low : low + " to " + Decimals.shortest(range.high(), 3);
  }

  /** Without what faults show by themselves, so that only the conditions of the text count. */
  private static ControlSystem asStated(ControlSystem system, List<Valued> all) {
    List<Fault> faults = system.faults().stream().map(fault -> new Fault(fault.name(), fault.thing(),
        fault.effects().stream().filter(effect -> !effect.isOutsideCircuit()).toList(), fault.likelihood()))
        .toList();
    List<SightCondition> asked = all.stream().flatMap(one -> one.values().stream()).map(Value::when).toList();
    return new ControlSystem(system.vocabulary(), system.parts(), faults, asked, system.strips());
  }

  private List<Clash> search(List<Valued> all) {
    List<CircuitState> states = CircuitState.start(system.vocabulary()).everyPosition(system.vocabulary());
    List<ReadingTable> tables = states.stream().map(state -> dictionary.table(state, List.of())).toList();
    return all.stream().flatMap(one -> first(one, states, tables).stream()).toList();
  }

  private Optional<Clash> first(Valued one, List<CircuitState> states, List<ReadingTable> tables) {
    List<String> keys = tables.get(0).sights();
    int[] bits = one.values().stream().mapToInt(value -> keys.indexOf(value.sight())).toArray();
    for (int number = 0; number < dictionary.cases().size(); number++) {
      for (int state = 0; state < states.size(); state++) {
        List<Value> held = held(one.values(), bits, tables.get(state), number);
        if (held.size() > 1) {
          return Optional.of(new Clash(one.key(), held.get(0).words(), held.get(1).words(), states.get(state),
              dictionary.cases().get(number)));
        }
      }
    }
    return Optional.empty();
  }

  /** The values whose conditions hold in one installation, where two do. */
  private static List<Value> held(List<Value> values, int[] bits, ReadingTable table, int number) {
    return IntStream.range(0, table.samples())
        .mapToObj(sample -> IntStream.range(0, bits.length).filter(i -> table.seen(number, sample, bits[i]))
            .mapToObj(values::get).toList())
        .filter(held -> held.size() > 1).findFirst().orElse(List.of());
  }
}
