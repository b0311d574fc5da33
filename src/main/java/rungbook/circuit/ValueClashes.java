package rungbook.circuit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/**
 * Finds sights of which the conditions of two values hold at once, in some position of the controls, in the healthy
 * system or with a fault. The panels are closed, every tolerance is at its middle, and a fault with a range is at
 * either end of it.
 */
public final class ValueClashes {

  /** Cases that are solved, times states; a system that needs more is not searched. */
  private static final int MOST_SOLUTIONS = 20_000;

  private final ControlSystem system;
  private final Dictionary dictionary;

  /** The first clash of a sight: two of its values, in one state, of one case. */
  public record Clash(Vocabulary.Sight sight, String first, String second, CircuitState state, String caseKey) {}

  private ValueClashes(ControlSystem system) {
    this.system = system;
    this.dictionary = Dictionary.of(system, Samples.faultEnds());
  }

  /**
   * At most one of each sight, in the order of the text.
   *
   * @param system one that was read without problems
   */
  public static List<Clash> of(ControlSystem system) {
    Set<String> conditioned = system.sights().stream().filter(one -> !one.when().equals(Condition.never()))
        .map(one -> Names.key(one.name())).collect(Collectors.toSet());
    List<Vocabulary.Sight> sights = system.vocabulary().sights().values().stream()
        .filter(sight -> sight.keys().stream().filter(conditioned::contains).count() > 1).toList();
    double solutions = CircuitState.positionCount(system.vocabulary().controls().values())
        * (1.0 + system.faults().size());
    return sights.isEmpty() || solutions > MOST_SOLUTIONS ? List.of()
        : new ValueClashes(asStated(system)).search(sights);
  }

  /** Without what faults show by themselves, so that only the conditions of the text count. */
  private static ControlSystem asStated(ControlSystem system) {
    List<Fault> faults = system.faults().stream().map(fault -> new Fault(fault.name(), fault.thing(),
        fault.effects().stream().filter(effect -> !(effect instanceof Effect.Show)).toList(), fault.likelihood()))
        .toList();
    return system.withFaults(faults);
  }

  private List<Clash> search(List<Vocabulary.Sight> sights) {
    List<CircuitState> states = CircuitState.start(system.vocabulary()).everyPosition(system.vocabulary());
    List<ReadingTable> tables = states.stream().map(state -> dictionary.table(state, List.of())).toList();
    List<String> keys = tables.get(0).sights();
    Map<String,
        Integer> bits = IntStream.range(0, keys.size()).boxed().collect(Collectors.toMap(keys::get, bit -> bit));
    return sights.stream().flatMap(sight -> first(sight, bits, states, tables).stream()).toList();
  }

  private Optional<Clash> first(Vocabulary.Sight sight, Map<String, Integer> bits, List<CircuitState> states,
      List<ReadingTable> tables) {
    List<ValueBit> values = IntStream.range(0, sight.values().size())
        .mapToObj(i -> new ValueBit(sight.values().get(i), bits.getOrDefault(sight.keys().get(i), -1)))
        .filter(value -> value.bit() >= 0).toList();
    for (int number = 0; number < dictionary.cases().size(); number++) {
      for (int state = 0; state < states.size(); state++) {
        List<ValueBit> held = held(values, tables.get(state), number);
        if (held.size() > 1) {
          return Optional.of(new Clash(sight, held.get(0).value(), held.get(1).value(), states.get(state),
              dictionary.cases().get(number)));
        }
      }
    }
    return Optional.empty();
  }

  /** A value, and its bit in the tables. */
  private record ValueBit(String value, int bit) {}

  /** The values whose conditions hold in one installation, where two do. */
  private static List<ValueBit> held(List<ValueBit> values, ReadingTable table, int number) {
    return IntStream.range(0, table.samples())
        .mapToObj(sample -> values.stream().filter(value -> table.seen(number, sample, value.bit())).toList())
        .filter(held -> held.size() > 1).findFirst().orElse(List.of());
  }
}
