package rungbook.circuit.sequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Spread;
import rungbook.system.QuantityRanges;

/** In which range each quantity outside the circuit is, as the system states it. */
final class QuantityLogic {

  private final Map<String, List<Stated>> ranges = new HashMap<>();

  /** A range, and when it holds. */
  private record Stated(Spread range, ConditionCompiler.Test when) {}

  QuantityLogic(List<QuantityRanges> quantities, ConditionCompiler compiler) {
    // one draw for all ranges of a quantity: a furnace with a high rise has it in every state
    quantities.forEach(one -> ranges.put(one.key(), one.ranges().stream()
        .map(range -> new Stated(new Spread(range.range(), one.key()), compiler.test(range.when()))).toList()));
  }

  /** The first range that holds. */
  Optional<Spread> range(String quantity, RelayState relays, CircuitState state) {
    return ranges.getOrDefault(quantity, List.of()).stream().filter(one -> one.when().of(relays, state.positions()))
        .map(Stated::range).findFirst();
  }
}
