package rungbook.system;

import java.util.List;
import java.util.function.Consumer;

/** When a contact is closed or a state is there, from the words {@code and}, {@code or} and {@code not}. */
public sealed interface Condition {

  record All(List<Condition> of) implements Condition {}

  record Any(List<Condition> of) implements Condition {}

  record Not(Condition of) implements Condition {}

  /** A selector stands at a position. */
  record Stands(String control, String position) implements Condition {}

  /** A part or state by its key: pulled in, running, powered, or there. */
  record On(String name) implements Condition {}

  /** Energised but not pulled in. */
  record Humming(String name) implements Condition {}

  /** A contact, switch or fuse by its key. */
  record Closed(String name) implements Condition {}

  Condition ALWAYS = new All(List.of());

  /** Hands every single term to {@code take}. */
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
