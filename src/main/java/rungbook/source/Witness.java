package rungbook.source;

import java.util.List;

/** What shows that a problem is real. */
public sealed interface Witness {

  /** A reading, as the meter's display would show it: {@code 5.0 V}. */
  record Reading(String shown) implements Witness {}

  /** The words that would be answered, one for each thing looked at. */
  record Answers(List<String> words) implements Witness {
    public Answers {
      words = List.copyOf(words);
    }
  }

  /** A way through the tree, step by step from the first. */
  record Path(List<Stop> stops) implements Witness {
    public Path {
      stops = List.copyOf(stops);
    }
  }

  /** A step passed on the way, and the answer that led on from it ({@code ""} at the last one). */
  record Stop(String step, Source source, Span span, String answer) {}
}
