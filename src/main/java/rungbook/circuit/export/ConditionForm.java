package rungbook.circuit.export;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.Condition;
import rungbook.text.JsonText;

/**
 * A condition as nested arrays: {@code [0, of...]} for all of them, {@code [1, of...]} for any, {@code [2, of]} for
 * not, {@code [3, control, position]}, {@code [4, name]} for on, {@code [5, name]} for humming, {@code [6, name]} for
 * closed. Names are numbers.
 */
final class ConditionForm {

  private final Interned names;

  ConditionForm(Interned names) {
    this.names = names;
  }

  String of(Condition condition) {
    if (condition instanceof Condition.All all) {
      return several(0, all.of());
    }
    if (condition instanceof Condition.Any any) {
      return several(1, any.of());
    }
    if (condition instanceof Condition.Not not) {
      return several(2, List.of(not.of()));
    }
    return JsonText.array(term(condition));
  }

  private String several(int kind, List<Condition> of) {
    return Stream.concat(Stream.of(String.valueOf(kind)), of.stream().map(this::of))
        .collect(Collectors.joining(",", "[", "]"));
  }

  private List<Integer> term(Condition condition) {
    if (condition instanceof Condition.Selected selected) {
      return List.of(3, names.of(selected.control()), names.of(selected.position()));
    }
    if (condition instanceof Condition.On on) {
      return List.of(4, names.of(on.name()));
    }
    if (condition instanceof Condition.Humming humming) {
      return List.of(5, names.of(humming.name()));
    }
    return List.of(6, names.of(((Condition.Closed) condition).name()));
  }
}
