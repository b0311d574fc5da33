package rungbook.circuit.export;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.system.Terminal;

/** The numbers that the nodes of one network have among those of all variants. */
final class NodeNumbers {

  private final Map<Integer, Integer> numbers = new HashMap<>();

  NodeNumbers(CircuitNetwork network, Interned all) {
    Map<Integer, String> names = new HashMap<>();
    network.nodes().forEach((terminal, node) -> names.merge(node, name(terminal),
        (one, other) -> one.compareTo(other) <= 0 ? one : other));
    names.entrySet().stream().sorted(Map.Entry.comparingByKey())
        .forEach(node -> numbers.put(node.getKey(), all.of(node.getValue())));
    numbers.put(0, 0);
  }

  private static String name(Terminal terminal) {
    return terminal.point() + "@" + terminal.place();
  }

  int of(int node) {
    return Objects.requireNonNull(numbers.get(node));
  }
}
