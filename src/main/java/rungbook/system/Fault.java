package rungbook.system;

import java.util.List;
import java.util.Optional;

/**
 * A fault of a system.
 *
 * @param thing the key of what it is in and is repaired at; empty where it is in the parts that its effects are in
 * @param likelihood relative to the other faults of the system, in any unit
 */
public record Fault(String name, Optional<String> thing, List<Effect> effects, double likelihood) {

  public Fault {
    effects = List.copyOf(effects);
  }

  public String key() {
    return Names.key(name);
  }
}
