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
 * @param name {@code healthy} or the fault's key
 * @param changes what the fault changes in the network
 * @param holds branches of stuck contacts by index, and whether they are stuck closed
 * @param stopped keys of boards and states that never come on
 * @param supplies volts of each faulty supply, by the supply's key
 */
public record FaultCase(String name, List<NetworkChange> changes, Map<Integer, Boolean> holds, Set<String> stopped,
    Map<String, Interval> supplies) {

  public static final FaultCase HEALTHY = new FaultCase("healthy", List.of(), Map.of(), Set.of(), Map.of());

  public static FaultCase of(Fault fault, CircuitNetwork network) {
    var builder = new Builder(network);
    fault.effects().forEach(builder::take);
    return new FaultCase(fault.key(), List.copyOf(builder.changes), Map.copyOf(builder.holds),
        Set.copyOf(builder.stopped),
        Map.copyOf(builder.supplies));
  }

  /**
   * Whether the fault can raise a current. Only these faults can have blown a fuse before the technician arrives.
   */
  public boolean mayBlowFuses() {
    return holds.containsValue(true)
        || changes.stream().anyMatch(c -> c instanceof NetworkChange.Bridge || c instanceof NetworkChange.Join);
  }

  boolean opens(int branch) {
    return changes.contains(new NetworkChange.Open(branch));
  }

  /** Ohms that the fault adds in series with a branch. */
  double raisedOhms(int branch) {
    return changes.stream().filter(change -> change instanceof NetworkChange.Raise raise && raise.branch() == branch)
        .mapToDouble(change -> ((NetworkChange.Raise) change).ohms()).sum();
  }

  /** Whether the fault changes a branch's admittance. */
  boolean alters(int branch) {
    return opens(branch) || raisedOhms(branch) > 0;
  }

  private static final class Builder {
    private final CircuitNetwork network;
    private final List<NetworkChange> changes = new ArrayList<>();
    private final Map<Integer, Boolean> holds = new HashMap<>();
    private final Set<String> stopped = new HashSet<>();
    private final Map<String, Interval> supplies = new HashMap<>();

    Builder(CircuitNetwork network) {
      this.network = network;
    }

    void take(Effect effect) {
      if (effect instanceof Effect.Open open) {
        changes.add(new NetworkChange.Open(network.indexOf(open.branch())));
      } else if (effect instanceof Effect.Raise raise) {
        changes.add(new NetworkChange.Raise(network.indexOf(raise.branch()), raise.ohms()));
      } else if (effect instanceof Effect.Bridge bridge) {
        bridge(bridge);
      } else if (effect instanceof Effect.Hold hold) {
        holds.put(network.indexOf(hold.branch()), hold.closed());
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
        changes.add(new NetworkChange.Join(network.node(join.a()).orElseThrow(), network.node(join.b()).orElseThrow(),
            draw -> siemens));
      } else if (effect instanceof Effect.Cross cross) {
        cross(network.indexOf(cross.branch()), network.indexOf(cross.other()));
      } else if (effect instanceof Effect.Weaken weaken) {
        // the core holds a quarter of the windings' ohms; the other three quarters do not change
        changes.add(new NetworkChange.Core(coreIndex(weaken.part()), 1 + 4 * (weaken.times() - 1), 1));
      } else if (effect instanceof Effect.Tap tap) {
        changes.add(new NetworkChange.Core(coreIndex(tap.part()), 1, primaryVolts(tap.part()) / tap.primaryVolts()));
      }
    }

    /** Bridges the terminals of the part, because a winding's own branch ends inside its transformer. */
    private void bridge(Effect.Bridge bridge) {
      PartBranch branch = network.system().branch(bridge.branch()).orElseThrow();
      int a = network.node(branch.a()).orElseThrow();
      int b = network.node(branch.b()).orElseThrow();
      changes.add(new NetworkChange.Bridge(network.indexOf(bridge.branch()), a, b, bridge.ohms()));
    }

    private void cross(int p, int q) {
      Branch first = network.branches().get(p);
      Branch second = network.branches().get(q);
      changes.add(new NetworkChange.Open(p));
      changes.add(new NetworkChange.Open(q));
      changes.add(new NetworkChange.Join(first.a(), second.b(), first.on()));
      changes.add(new NetworkChange.Join(second.a(), first.b(), second.on()));
    }

    private int coreIndex(String part) {
      for (int i = 0; i < network.cores().size(); i++) {
        if (network.cores().get(i).part().equals(part)) {
          return i;
        }
      }
      throw new IllegalArgumentException(part + " is no transformer");
    }

    private double primaryVolts(String part) {
      return network.system().part(part).map(t -> ((Part.Transformer) t).primaryVolts()).orElseThrow();
    }
  }
}
