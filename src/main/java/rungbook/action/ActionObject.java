package rungbook.action;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;

/** The kinds of objects that an action can have: which names of a system it accepts. */
public enum ActionObject {
  SETTING("control and position"),
  PANEL("panel"),
  INTERLOCK("switch to bypass"),
  POWER_SWITCH("power switch"),
  /** A terminal that leads can be put on. */
  POINT("point"),
  CAPACITOR("capacitor"),
  THING("part, point or control"),
  REPAIRABLE("part, point, control or thing that a fault is in"),
  RESETTABLE("part with manual reset"),
  RESTORABLE("panel, part, point or control"),
  /** The whole line in the author's own words; the editor suggests meter points. */
  FREE_TEXT("point");

  private final String words;

  ActionObject(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The system's names of this kind, for suggestions. */
  public Collection<String> names(Vocabulary system) {
    return switch (this) {
      case SETTING -> settings(system);
      case PANEL -> system.panels();
      case INTERLOCK -> system.controls(Role.INTERLOCK);
      case POWER_SWITCH -> system.controls(Role.ISOLATOR);
      case POINT, FREE_TEXT -> system.points().values().stream().map(Point::name).toList();
      case CAPACITOR -> capacitors(system);
      case THING -> system.things();
      case REPAIRABLE -> system.repairable();
      case RESETTABLE -> system.resettable();
      case RESTORABLE -> Stream.concat(system.things().stream(), system.panels().stream()).toList();
    };
  }

  /**
   * Whether a name is valid. If the system lists no parts, any name is valid where a part may be named. Does not look
   * up a control with its position.
   */
  public boolean accepts(Vocabulary system, String key) {
    return switch (this) {
      case SETTING, FREE_TEXT -> true;
      case PANEL -> isPanel(system, key);
      case INTERLOCK -> isControl(system, key, Role.INTERLOCK);
      case POWER_SWITCH -> isControl(system, key, Role.ISOLATOR);
      case POINT -> system.points().containsKey(key);
      case CAPACITOR -> system.parts().isEmpty() || system.holdsCharge(key);
      case THING -> system.parts().isEmpty() || isThing(system, key);
      case REPAIRABLE -> system.parts().isEmpty() || isThing(system, key) || system.isOutside(key);
      case RESETTABLE -> system.parts().isEmpty() || !system.resetWith(key).isEmpty();
      case RESTORABLE -> system.parts().isEmpty() || isThing(system, key) || isPanel(system, key);
    };
  }

  private static List<String> settings(Vocabulary system) {
    return system.controls().values().stream()
        .flatMap(control -> control.positions().stream().map(position -> control.name() + " " + position)).toList();
  }

  private static List<String> capacitors(Vocabulary system) {
    return system.parts().entrySet().stream().filter(part -> system.holdsCharge(part.getKey()))
        .map(part -> part.getValue().name()).toList();
  }

  private static boolean isPanel(Vocabulary system, String key) {
    for (Vocabulary.Location location : system.locations().values()) {
      if (location.panel().isPresent() && Names.key(location.panel().get()).equals(key)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isControl(Vocabulary system, String key, Role role) {
    Control control = system.controls().get(key);
    return control != null && control.role() == role;
  }

  private static boolean isThing(Vocabulary system, String key) {
    return (system.parts().containsKey(key) && !system.isOutside(key)) || system.points().containsKey(key)
        || system.controls().containsKey(key);
  }
}
