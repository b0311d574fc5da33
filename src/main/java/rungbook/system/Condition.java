package rungbook.system;

import java.util.List;
import java.util.function.Consumer;

/** When a contact is closed or a state is on: terms joined by {@code and}, {@code or} and {@code not}. */
public sealed interface Condition {

  record All(List<Condition> of) implements Condition {}

  record Any(List<Condition> of) implements Condition {}

  record Not(Condition of) implements Condition {}

  /** A selector is at a position; both are keys. */
  record Selected(String control, String position) implements Condition {}

  /** A load or state, by its key, is on: pulled in, running or powered. */
  record On(String name) implements Condition {}

  /** A load, by its key, is energized but not pulled in. */
  record Humming(String name) implements Condition {}

  /** A contact, switch or fuse, by its key, is closed. */
  record Closed(String name) implements Condition {}

  /** A condition that always holds. */
  static Condition always() {
    return new All(List.of());
  }

  /** A condition that does not hold in any state. */
  static Condition never() {
    return new Not(always());
  }

  /** Calls {@code take} with each term. */
  default void eachTerm(Consumer<Condition> take) {
    if (this instanceof All all) {
      all.of().forEach(c -> c.eachTerm(take));
    } else if (this instanceof Any any) {
      any.of().forEach(c -> c.eachTerm(take));
    } else if (this instanceof Not not) {
      not.of().eachTerm(take);
    } else {
      take.accept(this);
    }
  }
}
