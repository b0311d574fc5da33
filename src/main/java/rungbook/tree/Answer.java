package rungbook.tree;

import java.util.List;

/** The answer that a way on accepts. */
public sealed interface Answer {

  /** Readings between two ends. */
  record Within(Range range) implements Answer {}

  /** The display's overload. */
  record Overload() implements Answer {}

  /** Nothing steady can be read. */
  record NoReading() implements Answer {}

  /** One word for each thing checked, in lower case; {@link #ANY} where it does not matter. */
  record Words(List<String> words) implements Answer {
    public static final String ANY = "any";

    public Words {
      words = List.copyOf(words);
    }
  }

  /** Everything that no other answer accepts. */
  record AnythingElse() implements Answer {}

  /** Could not be read; a problem says why. */
  record Unreadable() implements Answer {}
}
