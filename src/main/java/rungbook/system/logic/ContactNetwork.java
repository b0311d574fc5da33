package rungbook.system.logic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/** The points of a system and what is between them; ground is one point everywhere. */
final class ContactNetwork {

  static final int GROUND = 0;

  private final Map<Terminal, Integer> points = new HashMap<>();
  private final List<Limb> conductors = new ArrayList<>();
  private final List<Source> sources = new ArrayList<>();
  private final List<List<Limb>> loads = new ArrayList<>();
  private final Map<String, Set<String>> assemblies;

  /** A branch of a part between two points. */
  record Limb(Part part, String key, int a, int b) {}

  /**
   * A leg of a supply, or a transformer's secondary winding.
   *
   * @param primary the winding that feeds it; null for a supply
   * @param primaryVolts rated
   */
  record Source(Limb limb, double volts, @Nullable Limb primary, double primaryVolts) {}

  ContactNetwork(ControlSystem system) {
    this.assemblies = system.vocabulary().assemblies();
    system.parts().forEach(this::add);
  }

  int points() {
    return points.size() + 1;
  }

  /** What conducts, or does where a contact is closed. */
  List<Limb> conductors() {
    return conductors;
  }

  List<Source> sources() {
    return sources;
  }

  /** The limbs of each load, in the order of the text. */
  List<List<Limb>> loads() {
    return loads;
  }

  /** A point's number; null if no part ends there. */
  @Nullable
  Integer find(Terminal terminal) {
    return terminal.isGround() ? Integer.valueOf(GROUND) : points.get(terminal);
  }

  /** Whether a limb is taken off: by itself, with its part or assembly, or, for a wire, at one of its ends. */
  boolean isTakenOff(Limb limb, ControlState state) {
    for (String off : state.disconnected()) {
      String part = limb.part().key();
      if (off.equals(limb.key()) || off.equals(part) || assemblies.getOrDefault(off, Set.of()).contains(part)
          || (isWire(limb.part()) && isEnd(off, limb))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isWire(Part part) {
    return part instanceof Part.Wire || part instanceof Part.Cable;
  }

  /** Whether a limb ends at a terminal, {@code y at furnace}. */
  private boolean isEnd(String terminal, Limb limb) {
    int at = terminal.lastIndexOf(" at ");
    Integer point = at < 0 ? null : find(new Terminal(terminal.substring(0, at), terminal.substring(at + 4)));
    return point != null && (point == limb.a() || point == limb.b());
  }

  private void add(Part part) {
    List<Limb> limbs = part.branches().stream().map(branch -> limb(part, branch)).toList();
    if (part instanceof Part.Supply supply) {
      limbs.forEach(leg -> sources.add(new Source(leg, supply.nominalVolts(), null, 0)));
    } else if (part instanceof Part.Load) {
      loads.add(limbs);
    } else if (!(part instanceof Part.Transformer transformer)) { // a capacitor passes the current of its winding
      conductors.addAll(limbs);
    } else if (limbs.size() > 1) {
      sources.add(new Source(limbs.get(1), transformer.secondaryVolts(), limbs.get(0), transformer.primaryVolts()));
    }
  }

  private Limb limb(Part part, PartBranch branch) {
    return new Limb(part, branch.key(), number(branch.a()), number(branch.b()));
  }

  private int number(Terminal terminal) {
    return terminal.isGround() ? GROUND : points.computeIfAbsent(terminal, any -> points.size() + 1);
  }
}
