package rungbook.tree;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which reading leads which way. Readings are counted in the meter's last digit, so a gap narrower than that is none, and
 * every reading the display can show is one whole number.
 *
 * @param digit one count, in the quantity's own unit
 * @param lowCount the least the display shows
 * @param highCount the most it shows before it overloads
 * @param spans what each way takes, cut where ranges meet; ways without a range are left out
 * @param overloadWay the way taken on overload, if any takes it
 * @param elseWay the way that takes whatever is left
 */
public record Readings(
    Quantity quantity, BigDecimal digit, long lowCount, long highCount, List<Taken> spans, OptionalInt overloadWay, OptionalInt noReadingWay,
    OptionalInt elseWay) {

  /** Counts {@code from} to {@code to}, both included, taken by a way's own range. Empty where {@code from > to}. */
  public record Taken(int way, long from, long to) {
    public boolean isEmpty() {
      return from > to;
    }

    public boolean holds(long count) {
      return from <= count && count <= to;
    }
  }

  public static Readings of(Step.MeterCheck check, Meter.Scale scale) {
    long low = count(scale.low(), scale.digit(), RoundingMode.CEILING);
    long high = count(scale.high(), scale.digit(), RoundingMode.FLOOR);
    var spans = new ArrayList<Taken>();
    List<Way> ways = check.ways();
    for (int way = 0; way < ways.size(); way++) {
      if (ways.get(way).answer() instanceof Answer.Within within) {
        spans.add(counts(way, cut(within.range(), check, way), scale.digit(), low, high));
      }
    }
    return new Readings(check.quantity(), scale.digit(), low, high, List.copyOf(spans), overload(ways), only(ways, Answer.NoReading.class),
        only(ways, Answer.AnythingElse.class));
  }

  /** The way a shown reading leads; empty if none takes it. */
  public OptionalInt wayOf(long count) {
    OptionalInt own = spans.stream().filter(span -> span.holds(count)).mapToInt(Taken::way).findFirst();
    return own.isPresent() ? own : elseWay;
  }

  public OptionalInt wayOfOverload() {
    return overloadWay.isPresent() ? overloadWay : elseWay;
  }

  public OptionalInt wayOfNoReading() {
    return noReadingWay.isPresent() ? noReadingWay : elseWay;
  }

  /** The count that a quantity shows as, or empty for an overload. @param reading in the quantity's own unit */
  public Optional<Long> shown(BigDecimal reading) {
    long count = count(reading, digit, RoundingMode.HALF_UP);
    return count > highCount || count < lowCount ? Optional.empty() : Optional.of(count);
  }

  /** A count as the display shows it: {@code 24.0 V}. */
  public String show(long count) {
    return digit.multiply(BigDecimal.valueOf(count)).setScale(Math.max(0, digit.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY).toPlainString()
        + " " + quantity.unit();
  }

  /** Ranges that meet share an end: it belongs to the one inside the expected window, else to the upper one. */
  private static Range cut(Range range, Step.MeterCheck check, int self) {
    boolean lowGiven = meets(range.low(), check, self, true) && !ownsEnd(range, check, range.low().orElseThrow(), true);
    boolean highGiven = meets(range.high(), check, self, false) && !ownsEnd(range, check, range.high().orElseThrow(), false);
    return new Range(range.low(), range.lowIncluded() && !lowGiven, range.high(), range.highIncluded() && !highGiven);
  }

  private static boolean meets(Optional<BigDecimal> end, Step.MeterCheck check, int self, boolean isLow) {
    return end.isPresent() && neighbour(end.get(), check, self, isLow).isPresent();
  }

  /** The other range that ends where this one starts (or starts where it ends), both including that end. */
  private static Optional<Range> neighbour(BigDecimal end, Step.MeterCheck check, int self, boolean isLow) {
    List<Way> ways = check.ways();
    for (int way = 0; way < ways.size(); way++) {
      if (way != self && ways.get(way).answer() instanceof Answer.Within other && !isPoint(other.range())) {
        Optional<BigDecimal> facing = isLow ? other.range().high() : other.range().low();
        boolean included = isLow ? other.range().highIncluded() : other.range().lowIncluded();
        if (included && facing.filter(value -> value.compareTo(end) == 0).isPresent()) {
          return Optional.of(other.range());
        }
      }
    }
    return Optional.empty();
  }

  private static boolean ownsEnd(Range range, Step.MeterCheck check, BigDecimal end, boolean isLow) {
    if (isPoint(range)) {
      return true;
    }
    Optional<Range> expected = check.expected();
    boolean healthy = expected.filter(window -> window.contains(end)).isPresent();
    boolean mine = healthy && inside(range, expected.orElseThrow());
    boolean theirs = healthy && neighbour(end, check, -1, isLow).filter(other -> inside(other, expected.orElseThrow())).isPresent();
    return mine == theirs ? isLow : mine;
  }

  private static boolean inside(Range range, Range window) {
    return range.low().filter(window::contains).isPresent() && range.high().filter(window::contains).isPresent();
  }

  private static boolean isPoint(Range range) {
    return range.low().isPresent() && range.high().isPresent() && range.low().get().compareTo(range.high().get()) == 0;
  }

  private static Taken counts(int way, Range range, BigDecimal digit, long low, long high) {
    long from = range.low().map(end -> count(end, digit, RoundingMode.CEILING) + (range.lowIncluded() || !isWhole(end, digit) ? 0 : 1)).orElse(low);
    long to = range.high().map(end -> count(end, digit, RoundingMode.FLOOR) - (range.highIncluded() || !isWhole(end, digit) ? 0 : 1)).orElse(high);
    return new Taken(way, from, to);
  }

  private static boolean isWhole(BigDecimal end, BigDecimal digit) {
    return end.remainder(digit).signum() == 0;
  }

  private static long count(BigDecimal value, BigDecimal digit, RoundingMode rounding) {
    return value.divide(digit, 0, rounding).longValueExact();
  }

  private static OptionalInt overload(List<Way> ways) {
    OptionalInt written = only(ways, Answer.Overload.class);
    if (written.isPresent()) {
      return written;
    }
    for (int way = 0; way < ways.size(); way++) {
      if (ways.get(way).answer() instanceof Answer.Within within && within.range().high().isEmpty()) {
        return OptionalInt.of(way);
      }
    }
    return OptionalInt.empty();
  }

  private static OptionalInt only(List<Way> ways, Class<? extends Answer> kind) {
    for (int way = 0; way < ways.size(); way++) {
      if (kind.isInstance(ways.get(way).answer())) {
        return OptionalInt.of(way);
      }
    }
    return OptionalInt.empty();
  }
}
