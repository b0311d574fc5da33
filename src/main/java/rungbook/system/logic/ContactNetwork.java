package rungbook.system.logic;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/** The points of a system and what is between them; ground is one point everywhere. */
final class ContactNetwork {

  static final int GROUND = 0;

  private static final BitSet NONE = new BitSet();

  private final Map<Terminal, Integer> points = new HashMap<>();
  private final List<Limb> conductors = new ArrayList<>();
  private final List<Source> sources = new ArrayList<>();
  private final List<List<Limb>> loads = new ArrayList<>();
  private final Map<String, BitSet> byPart = new HashMap<>();
  private final Map<String, BitSet> byName = new HashMap<>();
  private final Map<String, BitSet> byPanel = new HashMap<>();
  private final Map<Integer, BitSet> wiresAt = new HashMap<>();
  private int limbs;

  /**
   * A branch of a part between two points.
   *
   * @param number counts all limbs from 0
   */
  record Limb(int number, Part part, int a, int b) {}

  /**
   * A leg of a supply, or a transformer's secondary winding.
   *
   * @param primary the winding that feeds it; null for a supply
   * @param primaryVolts rated
   */
  record Source(Limb limb, double volts, @Nullable Limb primary, double primaryVolts) {}

  ContactNetwork(ControlSystem system) {
    system.parts().forEach(this::add);
    byPart.forEach((part, own) -> byName.computeIfAbsent(part, any -> new BitSet()).or(own));
    system.vocabulary().assemblies().forEach((assembly, parts) -> parts
        .forEach(part -> byName.computeIfAbsent(assembly, any -> new BitSet()).or(ofPart(part))));
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

  /** The numbers of the limbs of a part. */
  BitSet ofPart(String key) {
    return byPart.getOrDefault(key, NONE);
  }

  /** The numbers of the limbs of this name, of a part and of an assembly of this name. */
  BitSet named(String key) {
    return byName.getOrDefault(key, NONE);
  }

  /** The numbers of the limbs of the switches that a panel opens. */
  BitSet openedBy(String panel) {
    return byPanel.getOrDefault(panel, NONE);
  }

  /** The numbers of the wires and conductors that end at a terminal, {@code y at furnace}. */
  BitSet wiresAt(String terminal) {
    int at = terminal.lastIndexOf(" at ");
    Integer point = at < 0 ? null : find(new Terminal(terminal.substring(0, at), terminal.substring(at + 4)));
    return point == null ? NONE : wiresAt.getOrDefault(point, NONE);
  }

  private void add(Part part) {
    String key = part.key();
    List<Limb> limbs = part.branches().stream().map(branch -> limb(part, key, branch)).toList();
    if (part instanceof Part.Switch contact && contact.opensWith().isPresent()) {
      limbs.forEach(limb -> put(byPanel, Names.key(contact.opensWith().get()), limb));
    }
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

  private Limb limb(Part part, String key, PartBranch branch) {
    Limb limb = new Limb(limbs++, part, number(branch.a()), number(branch.b()));
    put(byPart, key, limb);
    put(byName, branch.key(), limb);
    if (part instanceof Part.Wire || part instanceof Part.Cable) {
      put(wiresAt, limb.a(), limb);
      put(wiresAt, limb.b(), limb);
    }
    return limb;
  }

  private static <K> void put(Map<K, BitSet> limbs, K key, Limb limb) {
    limbs.computeIfAbsent(key, any -> new BitSet()).set(limb.number());
  }

  private int number(Terminal terminal) {
    return terminal.isGround() ? GROUND : points.computeIfAbsent(terminal, any -> points.size() + 1);
  }
}
