package rungbook.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.system.Between;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Limb;
import rungbook.system.Part;

/**
 * The healthy system or the system with one fault.
 *
 * @param holds links of contacts that do not move, and whether they are closed
 * @param stopped keys of boards and states that never come on
 * @param supplies the volts of a supply that is not as it should be
 */
record Case(String name, List<Change> changes, Map<Integer, Boolean> holds, Set<String> stopped, Map<String, Between> supplies) {

  static final Case HEALTHY = new Case("healthy", List.of(), Map.of(), Set.of(), Map.of());

  static Case of(Fault fault, Wiring wiring) {
    var maker = new Maker(wiring);
    fault.effects().forEach(maker::take);
    return new Case(fault.key(), List.copyOf(maker.changes), Map.copyOf(maker.holds), Set.copyOf(maker.stopped), Map.copyOf(maker.supplies));
  }

  /** Only such a fault lets more current flow than the healthy system, so only it can have opened a fuse before anybody came. */
  boolean mayBlowFuses() {
    return holds.containsValue(true) || changes.stream().anyMatch(c -> c instanceof Change.Bridge || c instanceof Change.Join);
  }

  boolean opens(int link) {
    return changes.contains(new Change.Open(link));
  }

  /** What a fault adds in series with a link. */
  double raisedOhms(int link) {
    return changes.stream().filter(change -> change instanceof Change.Raise raise && raise.link() == link)
        .mapToDouble(change -> ((Change.Raise) change).ohms()).sum();
  }

  /** Whether a link conducts otherwise than in the healthy system. */
  boolean alters(int link) {
    return opens(link) || raisedOhms(link) > 0;
  }

  private static final class Maker {
    private final Wiring wiring;
    private final List<Change> changes = new ArrayList<>();
    private final Map<Integer, Boolean> holds = new HashMap<>();
    private final Set<String> stopped = new HashSet<>();
    private final Map<String, Between> supplies = new HashMap<>();

    Maker(Wiring wiring) {
      this.wiring = wiring;
    }

    void take(Effect effect) {
      if (effect instanceof Effect.Open open) {
        changes.add(new Change.Open(wiring.link(open.limb())));
      } else if (effect instanceof Effect.Raise raise) {
        changes.add(new Change.Raise(wiring.link(raise.limb()), raise.ohms()));
      } else if (effect instanceof Effect.Bridge bridge) {
        bridge(bridge);
      } else if (effect instanceof Effect.Hold hold) {
        holds.put(wiring.link(hold.limb()), hold.closed());
      } else if (effect instanceof Effect.Stop stop) {
        stopped.add(stop.part());
      } else if (effect instanceof Effect.Lower lower) {
        supplies.put(lower.part(), lower.volts());
      } else {
        takeRare(effect);
      }
    }

    private void takeRare(Effect effect) {
      if (effect instanceof Effect.Join join) {
        Phasor siemens = Phasor.of(1 / join.ohms());
        changes.add(new Change.Join(wiring.node(join.a()).orElseThrow(), wiring.node(join.b()).orElseThrow(), draw -> siemens));
      } else if (effect instanceof Effect.Cross cross) {
        cross(wiring.link(cross.limb()), wiring.link(cross.other()));
      } else if (effect instanceof Effect.Weaken weaken) {
        // the core carries a quarter of the windings' ohms; the rest stays where it is
        changes.add(new Change.Core(coupler(weaken.part()), 1 + 4 * (weaken.times() - 1), 1));
      } else if (effect instanceof Effect.Tap tap) {
        changes.add(new Change.Core(coupler(tap.part()), 1, primaryVolts(tap.part()) / tap.primaryVolts()));
      }
    }

    /** Between the limb's terminals; the link of a winding ends inside its transformer. */
    private void bridge(Effect.Bridge bridge) {
      Limb limb = wiring.system().limb(bridge.limb()).orElseThrow();
      int a = wiring.node(limb.a()).orElseThrow();
      int b = wiring.node(limb.b()).orElseThrow();
      changes.add(new Change.Bridge(wiring.link(bridge.limb()), a, b, bridge.ohms()));
    }

    private void cross(int p, int q) {
      Link first = wiring.links().get(p);
      Link second = wiring.links().get(q);
      changes.add(new Change.Open(p));
      changes.add(new Change.Open(q));
      changes.add(new Change.Join(first.a(), second.b(), first.on()));
      changes.add(new Change.Join(second.a(), first.b(), second.on()));
    }

    private int coupler(String part) {
      for (int i = 0; i < wiring.couplers().size(); i++) {
        if (wiring.couplers().get(i).part().equals(part)) {
          return i;
        }
      }
      throw new IllegalArgumentException(part + " is no transformer");
    }

    private double primaryVolts(String part) {
      return wiring.system().part(part).map(t -> ((Part.Transformer) t).primaryVolts()).orElseThrow();
    }
  }
}
