package rungbook.system;

import java.util.List;

/**
 * A fault of a system.
 *
 * @param likelihood relative to the other faults of the system, in any unit
 */
public record Fault(String name, List<Effect> effects, double likelihood) {

  public Fault {
    effects = List.copyOf(effects);
  }

  public String key() {
    return Names.key(name);
  }
}
