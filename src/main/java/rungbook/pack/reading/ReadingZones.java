package rungbook.pack.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/** What every reading at a check means. The pack's script only looks it up. */
public final class ReadingZones {

  /** Below the lowest reading that the meter shows, or an error below zero. */
  private static final long BOTTOM = Long.MIN_VALUE;

  private final Readings readings;
  private final WaySegments segments;
  private final Optional<Readings.Stretch> window;
  private final boolean windowHasTop;
  private final boolean onControlPoints;
  private final long bound;
  private final long lineVolts;
  private final long zeroError;

  /** @param bound the highest voltage that can be there, if the circuit knows one */
  public ReadingZones(Step.MeterCheck check, Meter.Scale scale, Optional<VoltageBound> bound) {
    this.readings = Readings.of(check, scale);
    this.segments = new WaySegments(check, readings, scale);
    this.window = check.expected().map(readings::stretch);
    this.windowHasTop = check.expected().isEmpty() || check.expected().get().high().isPresent();
    this.onControlPoints = bound.isPresent() && bound.get().onControlPoints();
    this.bound = bound.map(highest -> count(highest.volts())).orElse(Long.MAX_VALUE);
    this.lineVolts = count(BigDecimal.valueOf(Vocabulary.LINE_VOLTS));
    this.zeroError = count(scale.errorAt(BigDecimal.ZERO));
  }

  private long count(BigDecimal value) {
    return value.divide(readings.digit(), 0, RoundingMode.FLOOR).longValue();
  }

  public Readings readings() {
    return readings;
  }

  /** From the lowest readings to the highest; the first one has no lower end. */
  public List<Zone> all() {
    var zones = new ArrayList<Zone>();
    zones.add(at(BOTTOM));
    cuts().filter(cut -> cut > BOTTOM).sorted().distinct().mapToObj(this::at).forEach(zone -> {
      if (!zone.meansTheSameAs(zones.get(zones.size() - 1))) {
        zones.add(zone);
      }
    });
    return List.copyOf(zones);
  }

  private LongStream cuts() {
    LongStream ends = LongStream.of(-zeroError, 0, readings.lowCount(), lineVolts + 1, readings.highCount() + 1,
        bound == Long.MAX_VALUE ? 0 : bound + 1);
    LongStream windowEnds = window.stream().flatMapToLong(inside -> LongStream.of(inside.from(), inside.to() + 1));
    return LongStream.concat(LongStream.concat(ends, windowEnds), segments.cuts());
  }

  /** What the display's overload means. */
  public Zone overload() {
    if (isDangerousToTheMeter()) {
      return onControlPoints ? Zone.of(readings.highCount() + 1, Meaning.LINE_VOLTAGE) : at(readings.highCount() + 1);
    }
    return routed(readings.highCount() + 1, readings.wayOfOverload(), !windowHasTop);
  }

  /** What a display that does not settle means. */
  public Zone noReading() {
    return routed(BOTTOM, readings.wayOfNoReading(), false);
  }

  /**
   * Whether every reading that leads a way is one that a healthy system gives.
   *
   * @param way its number
   */
  public boolean isWhollyInside(int way) {
    if (window.isEmpty()) {
      return false;
    }
    boolean takesNumbers = readings.spans().stream().anyMatch(span -> span.way() == way);
    if (!takesNumbers) {
      return !windowHasTop && readings.overloadWay().equals(OptionalInt.of(way));
    }
    return readings.spans().stream().anyMatch(span -> span.way() == way && !span.isEmpty()
        && window.get().from() <= span.from() && Math.min(span.to(), readings.highCount()) <= window.get().to());
  }

  /** What a count of the meter's last digit means, as a zone that begins there. */
  public Zone at(long count) {
    if (count < readings.lowCount()) {
      return belowRange(count);
    }
    if (onControlPoints && count > Math.max(bound, lineVolts)) {
      return Zone.of(count, Meaning.LINE_VOLTAGE);
    }
    if (count > readings.highCount()) {
      return Zone.of(count, isDangerousToTheMeter() ? Meaning.OVER_RANGE : Meaning.NOT_SHOWN);
    }
    return isImpossible(count) ? Zone.of(count, Meaning.IMPOSSIBLE) : inRange(count);
  }

  /** A meter shorted at its leads may show a little less than zero. */
  private Zone belowRange(long count) {
    if (readings.lowCount() == 0 && count >= -zeroError) {
      return at(0).startingAt(count);
    }
    boolean minus = readings.lowCount() >= 0 && count < 0;
    return Zone.of(count, minus ? Meaning.MINUS : Meaning.NOT_SHOWN);
  }

  /** A way for nothing but such readings shows that its author knows of something that the circuit does not. */
  private boolean isImpossible(long count) {
    return count > bound && readings.spans().stream().noneMatch(span -> span.holds(count) && span.from() > bound);
  }

  private Zone inRange(long count) {
    OptionalInt limit = segments.limitNear(count);
    if (limit.isPresent()) {
      return segments.near(count, limit.getAsInt());
    }
    boolean inside = window.isPresent() && window.get().from() <= count && count <= window.get().to();
    return routed(count, readings.wayOf(count), inside);
  }

  private static Zone routed(long from, OptionalInt way, boolean inside) {
    return way.isEmpty() ? Zone.of(from, Meaning.UNTAKEN)
        : Zone.of(from, inside ? Meaning.INSIDE : Meaning.OUTSIDE, way.getAsInt());
  }

  private boolean isDangerousToTheMeter() {
    return readings.quantity().isVolts() || readings.quantity() == Quantity.AC_AMPS;
  }
}
