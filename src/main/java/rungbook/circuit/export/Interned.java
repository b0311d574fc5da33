package rungbook.circuit.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is said once and then named by its number, in the order in which it was first met. */
public final class Interned {

  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> all = new ArrayList<>();

  public int of(String one) {
    return numbers.computeIfAbsent(one, key -> {
      all.add(key);
      return all.size() - 1;
    });
  }

  public List<String> all() {
    return List.copyOf(all);
  }
}
