package rungbook.rules.paths;

import java.util.HashMap;
import java.util.Map;

/** The answers that are still possible on a path, by question and by how the equipment was when it was asked. */
final class Known {

  static final Known NOTHING = new Known(Map.of());

  private final Map<Asked, Long> possible;
  private final int hash;

  private Known(Map<Asked, Long> possible) {
    this.possible = possible;
    this.hash = possible.hashCode();
  }

  /** A question and how the equipment was. */
  private record Asked(String question, Equipment equipment) {}

  /** The answers to a question that are possible, of those in a set. */
  long among(long answers, String question, Equipment equipment) {
    return possible.getOrDefault(new Asked(question, equipment), Domain.ANY) & answers;
  }

  Known with(String question, Equipment equipment, long answers) {
    Map<Asked, Long> more = new HashMap<>(possible);
    more.put(new Asked(question, equipment), answers);
    return new Known(more);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Known known && hash == known.hash && possible.equals(known.possible);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
