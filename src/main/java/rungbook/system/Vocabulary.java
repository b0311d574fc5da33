package rungbook.system;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The names of a system that trees may use. Map keys are {@link Names#key} of the names.
 *
 * @param id the file's name without {@code .md}
 * @param sights names of what can be looked at, listened for or felt
 * @param parts each part's kind, such as {@code fuse}; an assembly that is no part itself is of the kind {@code
 * assembly}
 * @param assemblies the keys of the parts that each assembly consists of
 */
public record Vocabulary(
    String id, String title, Map<String, Location> locations, Map<String, Point> points, Map<String, Control> controls,
    Map<String, String> sights, Map<String, Part> parts, Map<String, String> faults,
    Map<String, Set<String>> assemblies) {

  /** In volts to ground; live parts at or above this must be de-energized before work: 29 CFR 1910.333(a)(1). */
  public static final double LINE_VOLTS = 50;

  /**
   * A location.
   *
   * @param panel the panel to open before working there
   * @param isInAttic whether one climbs and works in an attic there
   */
  public record Location(String name, Optional<String> panel, boolean isInAttic) {}

  /**
   * A test point.
   *
   * @param locations keys of the locations where a lead can reach it
   * @param volts to ground when live, where the text says so
   */
  public record Point(String name, Set<String> locations, OptionalDouble volts) {}

  public record Part(String name, String kind) {}

  public enum Role { SELECTOR, STAGE, ISOLATOR, INTERLOCK }

  /**
   * A control.
   *
   * @param positions the first is the initial position; only a selector and a stage have positions
   * @param isPullOut whether it is a pull-out, which is not to break or make the current of a load
   */
  public record Control(
      String name, Role role, List<String> positions, Set<String> locations, boolean isPullOut) {}

  /** A point's name as the text writes it; its key if there is no such point. */
  public String pointName(String key) {
    Point point = points.get(key);
    return point == null ? key : point.name();
  }

  /** A location's name as it was written; its key if there is no such location. */
  public String locationName(String key) {
    Location place = locations.get(key);
    return place == null ? key : place.name();
  }

  /** The panels that can be opened. */
  public List<String> panels() {
    return locations.values().stream().flatMap(place -> place.panel().stream()).distinct().toList();
  }

  /** The names of controls of one role. */
  public List<String> controls(Role role) {
    return controls.values().stream().filter(control -> control.role() == role).map(Control::name).toList();
  }

  /** Everything that can be disconnected, replaced or discharged: parts, points and controls. */
  public Collection<String> things() {
    return Stream.of(parts.values().stream().map(Part::name), points.values().stream().map(Point::name),
        controls.values().stream().map(Control::name)).flatMap(names -> names).toList();
  }

  /** Whether a part is of a kind; false if there is no such part. */
  public boolean isKind(String key, String kind) {
    return parts.containsKey(key) && parts.get(key).kind().equals(kind);
  }
}
