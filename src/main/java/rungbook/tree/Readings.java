package rungbook.tree;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rungbook.system.Quantity;

/**
 * Maps readings to ways on. Readings are integer counts of the meter's last digit, one for each reading that the
 * display can show, so a gap narrower than a digit is not a gap.
 *
 * @param digit one count, in the quantity's unit
 * @param lowCount the lowest count that the display shows
 * @param highCount the highest count before overload
 * @param spans the counts of each way, cut where ranges meet; ways without a range are left out
 * @param fromLowToHigh the nonempty spans, sorted by lower end
 * @param overloadWay the way for overload, if there is one
 * @param elseWay the way for everything else, if there is one
 */
public record Readings(
    Quantity quantity, BigDecimal digit, long lowCount, long highCount, List<Taken> spans, List<Taken> fromLowToHigh,
    OptionalInt overloadWay, OptionalInt noReadingWay,
    OptionalInt elseWay) {

  private static final BigDecimal FARTHEST = BigDecimal.valueOf(Long.MAX_VALUE / 4);

  /** Counts {@code from} to {@code to}, both included, that a way's range accepts. Empty where {@code from > to}. */
  public record Taken(int way, long from, long to) {
    public boolean isEmpty() {
      return from > to;
    }

    public boolean holds(long count) {
      return from <= count && count <= to;
    }
  }

  /** Counts {@code from} to {@code to}, both included. Empty where {@code from > to}. */
  public record Stretch(long from, long to) {
    public boolean isEmpty() {
      return from > to;
    }

    public long middle() {
      return from + (to - from) / 2;
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
    return new Readings(check.quantity(), scale.digit(), low, high, List.copyOf(spans), sorted(spans), overload(ways),
        only(ways, Answer.NoReading.class),
        only(ways, Answer.AnythingElse.class));
  }

  private static List<Taken> sorted(List<Taken> spans) {
    var sorted = new ArrayList<Taken>(spans.size());
    for (Taken span : spans) {
      if (!span.isEmpty()) {
        sorted.add(span);
      }
    }
    sorted.sort(Comparator.comparingLong(Taken::from));
    return List.copyOf(sorted);
  }

  /** The index of the way for a displayed reading; empty if there is none. */
  public OptionalInt wayOf(long count) {
    for (Taken span : spans) {
      if (span.holds(count)) {
        return OptionalInt.of(span.way());
      }
    }
    return elseWay;
  }

  public OptionalInt wayOfOverload() {
    return overloadWay.isPresent() ? overloadWay : elseWay;
  }

  public OptionalInt wayOfNoReading() {
    return noReadingWay.isPresent() ? noReadingWay : elseWay;
  }

  /**
   * The count that the display shows for a reading; empty if it is outside the display's range, above or below.
   *
   * @param reading in the quantity's unit
   */
  public Optional<Long> shown(BigDecimal reading) {
    long count = count(reading, digit, RoundingMode.HALF_UP);
    return count > highCount || count < lowCount ? Optional.empty() : Optional.of(count);
  }

  /** The counts of a range that the display can show. */
  public Stretch stretch(Range range) {
    Taken counts = counts(0, range, digit, lowCount, highCount);
    return new Stretch(Math.max(counts.from(), lowCount), Math.min(counts.to(), highCount));
  }

  /** The counts without a way on, from low to high. */
  public List<Stretch> gaps() {
    if (elseWay.isPresent()) {
      return List.of();
    }
    var gaps = new ArrayList<Stretch>(0);
    long next = lowCount;
    for (Taken span : fromLowToHigh) {
      if (span.from() > next && next <= highCount) {
        gaps.add(new Stretch(next, Math.min(span.from() - 1, highCount)));
      }
      next = Math.max(next, span.to() + 1);
    }
    if (next <= highCount) {
      gaps.add(new Stretch(next, highCount));
    }
    return gaps;
  }

  /** A stretch as an answer would write it: {@code 5.0 to 23.9 V}, {@code over 28.0 V}, {@code 24.0 V}. */
  public String show(Stretch stretch) {
    if (stretch.from() == stretch.to()) {
      return show(stretch.from());
    }
    if (stretch.to() >= highCount && stretch.from() > lowCount) {
      return "over " + show(stretch.from() - 1);
    }
    return stretch.from() <= lowCount && stretch.to() < highCount ? "under " + show(stretch.to() + 1)
        : number(stretch.from()) + " to " + show(stretch.to());
  }

  /** A count as the display shows it: {@code 24.0 V}. */
  public String show(long count) {
    return number(count) + " " + quantity.unit();
  }

  private String number(long count) {
    return digit.multiply(BigDecimal.valueOf(count))
        .setScale(Math.max(0, digit.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY).toPlainString();
  }

  /**
   * Cuts ranges that share an end: the end belongs to a single value there, else to the range inside the expected
   * window, else to the upper range.
   */
  private static Range cut(Range range, Step.MeterCheck check, int self) {
    boolean lowGiven = meets(range.low(), check, self, true) && !ownsEnd(range, check, self, true);
    boolean highGiven = meets(range.high(), check, self, false) && !ownsEnd(range, check, self, false);
    return new Range(range.low(), range.lowIncluded() && !lowGiven, range.high(), range.highIncluded() && !highGiven);
  }

  private static boolean meets(Optional<BigDecimal> end, Step.MeterCheck check, int self, boolean isLow) {
    return end.isPresent() && neighbor(end.get(), check, self, isLow).isPresent();
  }

  /**
   * The other range that ends where this one starts (or starts where it ends), both including that end; a single value
   * first.
   */
  private static Optional<Range> neighbor(BigDecimal end, Step.MeterCheck check, int self, boolean isLow) {
    Optional<Range> found = Optional.empty();
    List<Way> ways = check.ways();
    for (int way = 0; way < ways.size(); way++) {
      if (way != self && ways.get(way).answer() instanceof Answer.Within other && facesAt(end, other.range(), isLow)) {
        if (isPoint(other.range())) {
          return Optional.of(other.range());
        }
        found = found.or(() -> Optional.of(other.range()));
      }
    }
    return found;
  }

  private static boolean facesAt(BigDecimal end, Range other, boolean isLow) {
    Optional<BigDecimal> facing = isLow ? other.high() : other.low();
    return (isLow ? other.highIncluded() : other.lowIncluded()) && facing.isPresent()
        && facing.get().compareTo(end) == 0;
  }

  private static boolean ownsEnd(Range range, Step.MeterCheck check, int self, boolean isLow) {
    BigDecimal end = (isLow ? range.low() : range.high()).orElseThrow();
    Range other = neighbor(end, check, self, isLow).orElseThrow();
    if (isPoint(range) || isPoint(other)) {
      return isPoint(range);
    }
    boolean mine = check.expected().filter(window -> window.contains(end) && inside(range, window)).isPresent();
    boolean theirs = check.expected().filter(window -> window.contains(end) && inside(other, window)).isPresent();
    return mine == theirs ? isLow : mine;
  }

  /** An open side is inside only a window that is open on that side. */
  private static boolean inside(Range range, Range window) {
    return range.low().map(window::contains).orElse(window.low().isEmpty())
        && range.high().map(window::contains).orElse(window.high().isEmpty());
  }

  private static boolean isPoint(Range range) {
    return range.low().isPresent() && range.high().isPresent() && range.low().get().compareTo(range.high().get()) == 0;
  }

  private static Taken counts(int way, Range range, BigDecimal digit, long low, long high) {
    long from = range.low()
        .map(end -> count(end, digit, RoundingMode.CEILING) + (range.lowIncluded() || !isWhole(end, digit) ? 0 : 1))
        .orElse(low);
    long to = range.high()
        .map(end -> count(end, digit, RoundingMode.FLOOR) - (range.highIncluded() || !isWhole(end, digit) ? 0 : 1))
        .orElse(high);
    return new Taken(way, from, to);
  }

  private static boolean isWhole(BigDecimal end, BigDecimal digit) {
    return (isPowerOfTen(digit) && end.scale() <= digit.scale()) || end.remainder(digit).signum() == 0;
  }

  /** Clamps numbers far beyond any meter to a count that is still far beyond. */
  private static long count(BigDecimal value, BigDecimal digit, RoundingMode rounding) {
    BigDecimal counts = isPowerOfTen(digit) ? value.scaleByPowerOfTen(digit.scale()).setScale(0, rounding)
        : value.divide(digit, 0, rounding);
    return counts.min(FARTHEST).max(FARTHEST.negate()).longValueExact();
  }

  /** True for nearly every meter's last digit; the division is then a shift of the decimal point. */
  private static boolean isPowerOfTen(BigDecimal digit) {
    return digit.precision() == 1 && digit.unscaledValue().equals(BigInteger.ONE);
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
