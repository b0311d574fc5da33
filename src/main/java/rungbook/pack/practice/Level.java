package rungbook.pack.practice;

import java.util.Comparator;
import java.util.List;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Part;

/** How hard a case is to find: a level of practice, from 1. */
enum Level {
  OPEN_FUSE("A blown fuse or a tripped breaker"),
  OPEN_CONTACT("A switch or contact that does not close"),
  OPEN_WIRE("An open wire or conductor"),
  OPEN_LOAD("An open coil, motor or winding"),
  STUCK_CLOSED("Contacts stuck closed, and swapped wires"),
  RESISTANCE("A bad connection"),
  SHORT("A short"),
  WEAK("A weak part"),
  ANY("Any fault"),
  TWO_FAULTS("Two faults at once");

  private final String words;

  Level(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  int number() {
    return ordinal() + 1;
  }

  /**
   * The hardest of its effects on the circuit. What no meter finds, because it is only seen, is of no level of its own.
   *
   * @param faults of the case, at least one
   */
  static Level of(List<Fault> faults, ControlSystem system) {
    return faults.size() > 1 ? TWO_FAULTS : faults.get(0).effects().stream()
        .filter(effect -> !effect.isOutsideCircuit()).map(effect -> of(effect, system))
        .max(Comparator.naturalOrder()).orElse(ANY);
  }

  private static Level of(Effect effect, ControlSystem system) {
    if (effect instanceof Effect.Open open) {
      return ofOpen(system.partOfBranch(open.branch()).orElseThrow());
    }
    if (effect instanceof Effect.Hold hold) {
      return hold.closed() ? STUCK_CLOSED : OPEN_CONTACT;
    }
    if (effect instanceof Effect.Trip trip) {
      return trip.closed() ? STUCK_CLOSED : OPEN_CONTACT;
    }
    if (effect instanceof Effect.Stop) {
      return OPEN_LOAD;
    }
    return ofChange(effect);
  }

  private static Level ofOpen(Part part) {
    if (part instanceof Part.Fuse) {
      return OPEN_FUSE;
    }
    boolean isSwitch = part instanceof Part.Switch;
    return isSwitch ? OPEN_CONTACT : part instanceof Part.Wire || part instanceof Part.Cable ? OPEN_WIRE : OPEN_LOAD;
  }

  private static Level ofChange(Effect effect) {
    if (effect instanceof Effect.Cross) {
      return STUCK_CLOSED;
    }
    if (effect instanceof Effect.Raise) {
      return RESISTANCE;
    }
    return effect instanceof Effect.Bridge || effect instanceof Effect.Join ? SHORT : WEAK;
  }
}
