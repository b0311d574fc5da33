package rungbook.system;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The names of a system that trees may use. Map keys are {@link Names#key} of the names.
 *
 * @param id the file's name without {@code .md}
 * @param sights what can be looked at, listened for or felt
 * @param parts each part's kind, such as {@code fuse}; an assembly that is no part itself is of the kind {@code
 * assembly}, and what a fault is in that no circuit has is of the kind {@link #OUTSIDE}
 * @param assemblies the keys of the parts that each assembly consists of
 * @param quantities what can be measured outside the circuit
 */
public record Vocabulary(
    String id, String title, Map<String, Location> locations, Map<String, Point> points, Map<String, Control> controls,
    Map<String, Sight> sights, Map<String, Part> parts, Map<String, String> faults,
    Map<String, Set<String>> assemblies, Map<String, StatedQuantity> quantities) {

  /** In volts to ground; live parts at or above this must be de-energized before work: 29 CFR 1910.333(a)(1). */
  public static final double LINE_VOLTS = 50;

  /** The kind of a thing that is no part of the circuit: a filter, a vent, a drain pan. */
  public static final String OUTSIDE = "outside the circuit";

  /** A system that states no quantities. */
  public Vocabulary(
      String id, String title, Map<String, Location> locations, Map<String, Point> points,
      Map<String, Control> controls, Map<String, Sight> sights, Map<String, Part> parts, Map<String, String> faults,
      Map<String, Set<String>> assemblies) {
    this(id, title, locations, points, controls, sights, parts, faults, assemblies, Map.of());
  }

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

  /**
   * A part.
   *
   * @param hasCapacitor whether it is a motor with a run capacitor that the circuit does not draw
   * @param hasManualReset whether it is a switch that stays open until a button resets it
   */
  public record Part(String name, String kind, boolean hasCapacitor, boolean hasManualReset) {

    public Part(String name, String kind) {
      this(name, kind, false, false);
    }
  }

  /**
   * A sight.
   *
   * @param locations keys of the locations where it can be seen, heard or felt; empty where the text names none
   * @param values what it can show; empty for a sight that is there or not
   */
  public record Sight(String name, Set<String> locations, List<String> values) {

    public Sight {
      locations = Set.copyOf(locations);
      values = List.copyOf(values);
    }

    public String key() {
      return Names.key(name);
    }

    /** The keys of what is seen or not: each value with its sight, or the sight itself. */
    public List<String> keys() {
      return values.isEmpty() ? List.of(key()) : values.stream().map(value -> Names.key(name + " " + value)).toList();
    }
  }

  /**
   * What can be measured outside the circuit: a temperature rise, a flame current.
   *
   * @param kind what a meter measures
   * @param locations keys of the locations where it is measured; empty where the text names none
   */
  public record StatedQuantity(String name, Quantity kind, Set<String> locations) {

    public StatedQuantity {
      locations = Set.copyOf(locations);
    }
  }

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

  /** What is seen or not, as the text writes it: each sight, or each value with its sight. */
  public List<String> sightNames() {
    return sights.values().stream().flatMap(sight -> sight.values().isEmpty() ? Stream.of(sight.name())
        : sight.values().stream().map(value -> sight.name() + " " + value)).toList();
  }

  /** The name of what is seen, by its key or that of a value with its sight; the key if there is no such sight. */
  public String sightName(String key) {
    return sightNames().stream().filter(name -> Names.key(name).equals(key)).findFirst().orElse(key);
  }

  /** The sight of this key, or the one that has a value of this key. */
  public Optional<Sight> sight(String key) {
    return Optional.ofNullable(sights.get(key))
        .or(() -> sights.values().stream().filter(sight -> sight.keys().contains(key)).findFirst());
  }

  /** The names of what can be measured outside the circuit. */
  public List<String> quantityNames() {
    return quantities.values().stream().map(StatedQuantity::name).toList();
  }

  /** Whether a thing is outside the circuit, so that no conductor of it can be live. */
  public boolean isOutside(String key) {
    return isKind(key, OUTSIDE);
  }

  /** The panels that can be opened. */
  public List<String> panels() {
    return locations.values().stream().flatMap(place -> place.panel().stream()).distinct().toList();
  }

  /** The names of controls of one role. */
  public List<String> controls(Role role) {
    return controls.values().stream().filter(control -> control.role() == role).map(Control::name).toList();
  }

  /** Everything that can be disconnected or discharged: parts, points and controls. */
  public Collection<String> things() {
    return Stream.of(parts.values().stream().filter(part -> !part.kind().equals(OUTSIDE)).map(Part::name),
        points.values().stream().map(Point::name),
        controls.values().stream().map(Control::name)).flatMap(names -> names).toList();
  }

  /** Everything that can be repaired or replaced: things, and what is outside the circuit. */
  public Collection<String> repairable() {
    return Stream.concat(things().stream(),
        parts.values().stream().filter(part -> part.kind().equals(OUTSIDE)).map(Part::name)).toList();
  }

  /** Whether a part is of a kind; false if there is no such part. */
  public boolean isKind(String key, String kind) {
    return parts.containsKey(key) && parts.get(key).kind().equals(kind);
  }

  /** Whether a part can be discharged: a capacitor, a motor that has one of its own, or what has such a motor in it. */
  public boolean holdsCharge(String key) {
    return isKind(key, "capacitor") || !motorsWithCapacitor(key).isEmpty();
  }

  /** The names of what a button resets. */
  public Collection<String> resettable() {
    return parts.entrySet().stream().filter(part -> !resetWith(part.getKey()).isEmpty())
        .map(part -> part.getValue().name()).toList();
  }

  /** The keys of the switches with manual reset that a thing is, or that are in it. */
  public Set<String> resetWith(String key) {
    return members(key).filter(Part::hasManualReset).map(part -> Names.key(part.name())).collect(Collectors.toSet());
  }

  /** The keys of the parts that hold the same charge, so that discharging one discharges all. */
  public Set<String> sharingCharge(String key) {
    Set<String> motors = motorsWithCapacitor(key);
    return Stream.concat(Stream.of(key), parts.keySet().stream()
        .filter(other -> motorsWithCapacitor(other).stream().anyMatch(motors::contains))).collect(Collectors.toSet());
  }

  private Set<String> motorsWithCapacitor(String key) {
    return members(key).filter(Part::hasCapacitor).map(part -> Names.key(part.name())).collect(Collectors.toSet());
  }

  /** A part, or the parts of an assembly. */
  private Stream<Part> members(String key) {
    return Stream.concat(Stream.of(key), assemblies.getOrDefault(key, Set.of()).stream())
        .flatMap(name -> Stream.ofNullable(parts.get(name)));
  }
}
