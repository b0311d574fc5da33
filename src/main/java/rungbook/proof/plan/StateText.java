package rungbook.proof.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.circuit.network.CircuitState;

/** A state of the equipment in words, as far as it differs from the start. */
public final class StateText {

  private StateText() {}

  public static String of(CircuitState state, CircuitState start) {
    List<String> words = new ArrayList<>();
    state.positions().entrySet().stream().filter(one -> !one.getValue().equals(start.positions().get(one.getKey())))
        .map(one -> one.getKey() + " " + one.getValue()).sorted().forEach(words::add);
    add(state.off(), "off", words);
    add(state.open(), "open", words);
    add(state.bypassed(), "bypassed", words);
    add(state.disconnected(), "disconnected", words);
    add(state.replaced(), "replaced", words);
    return words.isEmpty() ? "nothing set or opened" : String.join("; ", words);
  }

  private static void add(Set<String> names, String what, List<String> words) {
    if (!names.isEmpty()) {
      words.add(names.stream().sorted().collect(Collectors.joining(", ")) + " " + what);
    }
  }
}
