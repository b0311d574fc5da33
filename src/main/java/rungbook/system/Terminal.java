package rungbook.system;

import org.jspecify.annotations.Nullable;

/**
 * A point at one location: one electrical node. {@code Y} at the thermostat and {@code Y} at the furnace are two
 * terminals, and the wire between them can be open.
 *
 * @param point a point's key, or the name of a node inside a part, where a lead cannot reach
 * @param place a location's key; empty inside a part
 */
public record Terminal(String point, String place) {

  /** The point that is ground at every location. */
  public static final String GROUND = "ground";

  public static Terminal inside(String name) {
    return new Terminal(name, "");
  }

  public boolean isGround() {
    return point.equals(GROUND);
  }

  // a record's own equality is linked at run time, which a short check would wait for
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Terminal terminal && point.equals(terminal.point) && place.equals(terminal.place);
  }

  @Override
  public int hashCode() {
    return 31 * point.hashCode() + place.hashCode();
  }

  @Override
  public String toString() {
    return place.isEmpty() ? "inside " + point : point + " at " + place;
  }
}
