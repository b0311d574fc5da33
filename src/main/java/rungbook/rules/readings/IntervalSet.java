package rungbook.rules.readings;

import java.util.Map;
import java.util.TreeMap;
import rungbook.tree.Readings.Taken;

/** A set of counts, as disjoint intervals: maps the start of each to its last count. */
final class IntervalSet {

  private final TreeMap<Long, Long> stretches = new TreeMap<>();

  boolean holdsAll(Taken span) {
    Map.Entry<Long, Long> at = stretches.floorEntry(span.from());
    return at != null && at.getValue() >= span.to();
  }

  void add(Taken span) {
    long from = span.from();
    long to = span.to();
    Map.Entry<Long, Long> before = stretches.floorEntry(from);
    if (before != null && before.getValue() >= from - 1) {
      from = before.getKey();
      to = Math.max(to, before.getValue());
    }
    for (Map.Entry<Long, Long> next = stretches.ceilingEntry(from); next != null && next.getKey() <= to + 1;
        next = stretches.higherEntry(from)) {
      to = Math.max(to, next.getValue());
      stretches.remove(next.getKey());
    }
    stretches.put(from, to);
  }
}
