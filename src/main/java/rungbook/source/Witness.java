package rungbook.source;

import java.util.List;

/** What shows that a problem is real. */
public sealed interface Witness {

  /** A reading, as the meter's display would show it: {@code 5.0 V}. */
  record Reading(String shown) implements Witness {}

  /** The words of an answer, one for each thing checked. */
  record Answers(List<String> words) implements Witness {
    public Answers {
      words = List.copyOf(words);
    }
  }

  /**
   * A path through the tree, starting at the first step.
   *
   * @param variant of the system, where it is not the base; else empty
   */
  record Path(List<Stop> stops, String variant) implements Witness {
    public Path {
      stops = List.copyOf(stops);
    }

    public Path(List<Stop> stops) {
      this(stops, "");
    }
  }

  /** A step on the path, and the answer taken there ({@code ""} at the last step). */
  record Stop(String step, Source source, Span span, String answer) {}
}
