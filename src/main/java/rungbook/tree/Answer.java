package rungbook.tree;

import java.util.List;

/** What a way on takes. */
public sealed interface Answer {

  /** Readings between two ends. */
  record Within(Range range) implements Answer {}

  /** The display's overload. */
  record Overload() implements Answer {}

  /** Nothing steady can be read. */
  record NoReading() implements Answer {}

  /** A word for each thing looked at; {@link #ANY} for one that does not matter. Lower case. */
  record Words(List<String> words) implements Answer {
    public static final String ANY = "any";

    public Words {
      words = List.copyOf(words);
    }
  }

  /** Whatever no other answer takes. */
  record AnythingElse() implements Answer {}

  /** Could not be read; a problem says why. */
  record Unreadable() implements Answer {}
}
