package rungbook.proof.accounting;

import java.util.Arrays;
import java.util.stream.LongStream;
import rungbook.tree.Readings;

/**
 * Every reading a display can show, cut where the way on changes, from low to high. An edge is halfway between two
 * counts of the last digit, where the display rounds the other way.
 */
public final class Segments {

  /** No way takes it. */
  public static final int NONE = -1;

  private final long[] from;
  private final int[] ways;
  private final double[] edges;
  private final int overloadWay;
  private final int noReadingWay;
  private final double most;

  private Segments(long[] from, int[] ways, Readings readings) {
    this.from = from;
    this.ways = ways;
    double digit = readings.digit().doubleValue();
    edges = Arrays.stream(from).mapToDouble(count -> (count - 0.5) * digit).toArray();
    most = (readings.highCount() + 0.5) * digit;
    overloadWay = readings.wayOfOverload().orElse(NONE);
    noReadingWay = readings.wayOfNoReading().orElse(NONE);
  }

  static Segments of(Readings readings) {
    long[] cuts = LongStream.concat(LongStream.of(readings.lowCount()),
        readings.spans().stream().filter(span -> !span.isEmpty())
            .flatMapToLong(span -> LongStream.of(span.from(), span.to() + 1)))
        .filter(cut -> cut >= readings.lowCount() && cut <= readings.highCount()).sorted().distinct().toArray();
    int[] ways = Arrays.stream(cuts).mapToInt(cut -> readings.wayOf(cut).orElse(NONE)).toArray();
    int kept = 0;
    for (int i = 0; i < cuts.length; i++) {
      if (kept == 0 || ways[i] != ways[kept - 1]) {
        cuts[kept] = cuts[i];
        ways[kept++] = ways[i];
      }
    }
    return new Segments(Arrays.copyOf(cuts, kept), Arrays.copyOf(ways, kept), readings);
  }

  public int size() {
    return ways.length;
  }

  public int way(int segment) {
    return ways[segment];
  }

  /** The first count of a segment. */
  public long from(int segment) {
    return from[segment];
  }

  /** The true value from which a segment is shown. */
  double edge(int segment) {
    return edges[segment];
  }

  /** The segment that a value is shown in; its first for less than the display can show. */
  int at(double value) {
    int segment = 0;
    while (segment + 1 < edges.length && value >= edges[segment + 1]) {
      segment++;
    }
    return segment;
  }

  boolean overloads(double value) {
    return value >= most;
  }

  /** The upper edge of a segment; of the last one the most that the display shows. */
  double end(int segment) {
    return segment + 1 < edges.length ? edges[segment + 1] : most;
  }

  int overloadWay() {
    return overloadWay;
  }

  int noReadingWay() {
    return noReadingWay;
  }
}
