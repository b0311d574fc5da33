package rungbook.pack.reading;

import java.util.List;

/**
 * Readings with one meaning, up to where the next zone begins.
 *
 * @param from the lowest count of the meter's last digit
 * @param ways the ways on, by number: one, or the two beside a limit, the lower first
 * @param limit the limit between two ways, {@code 20 V}; empty unless there are two
 */
public record Zone(long from, Meaning meaning, List<Integer> ways, String limit) {

  public Zone {
    ways = List.copyOf(ways);
  }

  static Zone of(long from, Meaning meaning, Integer... ways) {
    return new Zone(from, meaning, List.of(ways), "");
  }

  Zone startingAt(long count) {
    return new Zone(count, meaning, ways, limit);
  }

  boolean meansTheSameAs(Zone other) {
    return startingAt(other.from).equals(other);
  }
}
