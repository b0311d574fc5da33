package rungbook.system;

import java.util.List;
import rungbook.source.Span;

/** @param likelihood against the other faults of the system, in any unit */
public record Fault(String name, Span span, List<Effect> effects, double likelihood) {

  public Fault {
    effects = List.copyOf(effects);
  }

  public String key() {
    return Names.key(name);
  }
}
