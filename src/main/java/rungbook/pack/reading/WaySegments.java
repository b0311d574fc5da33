package rungbook.pack.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import rungbook.tree.Answer;
import rungbook.tree.Meter;
import rungbook.tree.Range;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/**
 * The display's range in segments of one way each, and the readings near a limit: those that the meter's error could
 * place on its other side. Where every reading of a segment is near a limit, they go by the number alone.
 */
final class WaySegments {

  private final List<Way> ways;
  private final Readings readings;
  private final Meter.Scale scale;
  private final long[] starts;

  WaySegments(Step.MeterCheck check, Readings readings, Meter.Scale scale) {
    this.ways = check.ways();
    this.readings = readings;
    this.scale = scale;
    this.starts = LongStream
        .concat(LongStream.of(readings.lowCount()),
            readings.spans().stream().filter(span -> !span.isEmpty())
                .flatMapToLong(span -> LongStream.of(span.from(), span.to() + 1)))
        .filter(count -> count >= readings.lowCount() && count <= readings.highCount()).sorted().distinct().toArray();
  }

  /** Every count at which the way, or whether a limit is near, may change. */
  LongStream cuts() {
    return LongStream.concat(LongStream.of(starts),
        IntStream.range(1, starts.length).mapToObj(i -> LongStream.of(lowestNear(i), highestNear(i) + 1))
            .flatMapToLong(near -> near));
  }

  /** The number of the limit that a reading is near, for {@link #near}; empty if the meter can place it. */
  OptionalInt limitNear(long count) {
    int segment = segment(count);
    if (isLimit(segment + 1) && count >= lowestNear(segment + 1) && hasClearReading(segment)) {
      return OptionalInt.of(segment + 1);
    }
    return isLimit(segment) && count <= highestNear(segment) && hasClearReading(segment) ? OptionalInt.of(segment)
        : OptionalInt.empty();
  }

  Zone near(long from, int limit) {
    return new Zone(from, Meaning.NEAR, List.of(way(limit - 1).getAsInt(), way(limit).getAsInt()), written(limit));
  }

  private int segment(long count) {
    int segment = starts.length - 1;
    while (segment > 0 && starts[segment] > count) {
      segment--;
    }
    return segment;
  }

  private OptionalInt way(int segment) {
    return readings.wayOf(starts[segment]);
  }

  /** Whether a segment and the one below it lead to different places. */
  private boolean isLimit(int segment) {
    return segment > 0 && segment < starts.length && way(segment).isPresent() && way(segment - 1).isPresent()
        && !target(segment).equals(target(segment - 1));
  }

  private Target target(int segment) {
    return ways.get(way(segment).getAsInt()).target();
  }

  private boolean hasClearReading(int segment) {
    long last = segment + 1 < starts.length ? starts[segment + 1] - 1 : readings.highCount();
    long from = isLimit(segment) ? Math.max(starts[segment], highestNear(segment) + 1) : starts[segment];
    long to = isLimit(segment + 1) ? Math.min(last, lowestNear(segment + 1) - 1) : last;
    return from <= to;
  }

  /** The lowest count {@code c} with {@code c + share·|c| + digits} at the limit. */
  private long lowestNear(int limit) {
    BigDecimal reach = BigDecimal.valueOf(starts[limit]).subtract(scale.digits());
    BigDecimal by = stretched(reach.signum());
    return by.signum() <= 0 ? readings.lowCount() : reach.divide(by, 0, RoundingMode.CEILING).longValue();
  }

  /** The highest count {@code c} with {@code c - share·|c| - digits} below the limit. */
  private long highestNear(int limit) {
    BigDecimal reach = BigDecimal.valueOf(starts[limit] - 1).add(scale.digits());
    BigDecimal by = stretched(-reach.signum());
    return by.signum() <= 0 ? readings.highCount() : reach.divide(by, 0, RoundingMode.FLOOR).longValue();
  }

  /** One and the share of the reading that the meter may be off, or one less that share. */
  private BigDecimal stretched(int sign) {
    return BigDecimal.ONE.add(scale.percent().movePointLeft(2).multiply(BigDecimal.valueOf(sign)));
  }

  /** The limit as the tree writes it, in the quantity's unit. */
  private String written(int limit) {
    Optional<BigDecimal> end = Stream.of(range(limit).flatMap(Range::low), range(limit - 1).flatMap(Range::high))
        .flatMap(Optional::stream).findFirst();
    return end.map(value -> NumberWords.of(value, readings.quantity())).orElseGet(() -> readings.show(starts[limit]));
  }

  private Optional<Range> range(int segment) {
    return ways.get(way(segment).getAsInt()).answer() instanceof Answer.Within within ? Optional.of(within.range())
        : Optional.empty();
  }
}
