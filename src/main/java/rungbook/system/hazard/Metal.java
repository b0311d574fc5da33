package rungbook.system.hazard;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/** Terminals joined into sets: two of them are in one set if parts of the chosen kinds join them. */
final class Metal {

  private static final Terminal GROUND = new Terminal(Terminal.GROUND, "");

  private final Map<Terminal, Terminal> toward = new HashMap<>();

  private Metal() {}

  /** @param joins whether a part joins the two ends of each of its branches */
  static Metal of(ControlSystem system, Predicate<Part> joins) {
    Metal metal = new Metal();
    for (Part part : system.parts()) {
      if (joins.test(part)) {
        for (PartBranch branch : part.branches()) {
          metal.toward.put(metal.root(branch.a()), metal.root(branch.b()));
        }
      }
    }
    return metal;
  }

  /** Ground is one terminal everywhere. */
  Terminal root(Terminal terminal) {
    Terminal at = terminal.isGround() ? GROUND : terminal;
    Terminal next = toward.getOrDefault(at, at);
    while (!next.equals(at)) {
      Terminal further = toward.getOrDefault(next, next);
      toward.put(at, further);
      at = next;
      next = further;
    }
    return at;
  }
}
