package rungbook.rules.state;

import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary;

/**
 * What names and places say about where power comes from. The vocabulary of a system does not include its wiring, so
 * only this is assumed: a power switch feeds the line-voltage points at its location, and the control points there if
 * the transformer is there too; points named after the switch may be on its line side.
 */
public final class Sources {

  private Sources() {}

  /** Whether a place is behind a panel; any place may be, if the system does not know it. */
  public static boolean mayBeBehind(String panel, String place, Optional<Vocabulary> system) {
    return system.map(known -> known.locations().get(place))
        .map(location -> location.panel().map(Names::key).filter(panel::equals).isPresent()).orElse(true);
  }

  /**
   * Whether a point may stay live when a source is off, because it is named after the source: {@code disconnect L1} of
   * {@code outdoor disconnect}.
   */
  static boolean mayBeAheadOf(String source, String point) {
    return point.startsWith(source) || point.startsWith(source.substring(source.lastIndexOf(' ') + 1));
  }

  /** Whether a point is named after any of a system's power switches. */
  public static boolean mayBeAheadOfAny(Vocabulary system, String point) {
    for (Control control : system.controls().values()) {
      if (control.role() == Vocabulary.Role.ISOLATOR && mayBeAheadOf(Names.key(control.name()), point)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a point at a place is known to be dead when a source is off. */
  static boolean feeds(Vocabulary system, String source, String point, String place) {
    Control control = system.controls().get(source);
    Point known = system.points().get(point);
    if (control == null || known == null) {
      return false;
    }
    boolean here = control.locations().contains(place) && known.locations().contains(place);
    return here && !mayBeAheadOf(source, point) && (isLineVoltage(known) || hasTransformer(system, place));
  }

  /** Whether a power switch is at a place. */
  static boolean isAt(Optional<Vocabulary> system, String source, String place) {
    return system.map(known -> known.controls().get(source)).filter(control -> control.locations().contains(place))
        .isPresent();
  }

  public static boolean isLineVoltage(Point point) {
    OptionalDouble volts = point.volts();
    return volts.isPresent() && volts.getAsDouble() >= Vocabulary.LINE_VOLTS;
  }

  /** Whether a lead's point is marked with line voltage. */
  public static boolean isLineVoltage(Optional<Vocabulary> system, String point) {
    return system.isPresent() && system.get().points().containsKey(point)
        && isLineVoltage(system.get().points().get(point));
  }

  /** Whether a place has line voltage. */
  public static boolean hasLineVoltage(Vocabulary system, String place) {
    for (Point point : system.points().values()) {
      if (isLineVoltage(point) && point.locations().contains(place)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasTransformer(Vocabulary system, String place) {
    for (Point point : system.points().values()) {
      if (point.name().regionMatches(true, 0, "transformer", 0, 11) && point.locations().contains(place)) {
        return true;
      }
    }
    return false;
  }
}
