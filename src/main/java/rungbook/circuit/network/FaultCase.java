package rungbook.circuit.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Interval;
import rungbook.system.Part;
import rungbook.system.PartBranch;

/**
 * The healthy system or the system with one fault.
 *
 * @param holds links of contacts that do not move, and whether they are closed
 * @param stopped keys of boards and states that never come on
 * @param supplies the volts of a supply that is not as it should be
 */
public record FaultCase(String name, List<NetworkChange> changes, Map<Integer, Boolean> holds, Set<String> stopped,
    Map<String, Interval> supplies) {

  public static final FaultCase HEALTHY = new FaultCase("healthy", List.of(), Map.of(), Set.of(), Map.of());

  public static FaultCase of(Fault fault, CircuitNetwork wiring) {
    var maker = new Maker(wiring);
    fault.effects().forEach(maker::take);
    return new FaultCase(fault.key(), List.copyOf(maker.changes), Map.copyOf(maker.holds), Set.copyOf(maker.stopped),
        Map.copyOf(maker.supplies));
  }

  /**
   * Only such a fault lets more current flow than the healthy system, so only it can have opened a fuse before anybody
   * came.
   */
  public boolean mayBlowFuses() {
    return holds.containsValue(true)
        || changes.stream().anyMatch(c -> c instanceof NetworkChange.Bridge || c instanceof NetworkChange.Join);
  }

  boolean opens(int link) {
    return changes.contains(new NetworkChange.Open(link));
  }

  /** What a fault adds in series with a link. */
  double raisedOhms(int link) {
    return changes.stream().filter(change -> change instanceof NetworkChange.Raise raise && raise.link() == link)
        .mapToDouble(change -> ((NetworkChange.Raise) change).ohms()).sum();
  }

  /** Whether a link conducts otherwise than in the healthy system. */
  boolean alters(int link) {
    return opens(link) || raisedOhms(link) > 0;
  }

  private static final class Maker {
    private final CircuitNetwork wiring;
    private final List<NetworkChange> changes = new ArrayList<>();
    private final Map<Integer, Boolean> holds = new HashMap<>();
    private final Set<String> stopped = new HashSet<>();
    private final Map<String, Interval> supplies = new HashMap<>();

    Maker(CircuitNetwork wiring) {
      this.wiring = wiring;
    }

    void take(Effect effect) {
      if (effect instanceof Effect.Open open) {
        changes.add(new NetworkChange.Open(wiring.link(open.limb())));
      } else if (effect instanceof Effect.Raise raise) {
        changes.add(new NetworkChange.Raise(wiring.link(raise.limb()), raise.ohms()));
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
        changes.add(new NetworkChange.Join(wiring.node(join.a()).orElseThrow(), wiring.node(join.b()).orElseThrow(),
            draw -> siemens));
      } else if (effect instanceof Effect.Cross cross) {
        cross(wiring.link(cross.limb()), wiring.link(cross.other()));
      } else if (effect instanceof Effect.Weaken weaken) {
        // the core carries a quarter of the windings' ohms; the rest stays where it is
        changes.add(new NetworkChange.Core(coupler(weaken.part()), 1 + 4 * (weaken.times() - 1), 1));
      } else if (effect instanceof Effect.Tap tap) {
        changes.add(new NetworkChange.Core(coupler(tap.part()), 1, primaryVolts(tap.part()) / tap.primaryVolts()));
      }
    }

    /** Between the limb's terminals; the link of a winding ends inside its transformer. */
    private void bridge(Effect.Bridge bridge) {
      PartBranch limb = wiring.system().limb(bridge.limb()).orElseThrow();
      int a = wiring.node(limb.a()).orElseThrow();
      int b = wiring.node(limb.b()).orElseThrow();
      changes.add(new NetworkChange.Bridge(wiring.link(bridge.limb()), a, b, bridge.ohms()));
    }

    private void cross(int p, int q) {
      Branch first = wiring.links().get(p);
      Branch second = wiring.links().get(q);
      changes.add(new NetworkChange.Open(p));
      changes.add(new NetworkChange.Open(q));
      changes.add(new NetworkChange.Join(first.a(), second.b(), first.on()));
      changes.add(new NetworkChange.Join(second.a(), first.b(), second.on()));
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
