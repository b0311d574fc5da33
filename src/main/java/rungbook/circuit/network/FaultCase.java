package rungbook.circuit.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
 * @param pickUps volts at which each stiff load pulls in, by the load's key
 * @param conditional what it does while conditions hold
 */
public record FaultCase(String name, List<NetworkChange> changes, Map<Integer, Boolean> holds, Set<String> stopped,
    Map<String, Interval> supplies, Map<String, Spread> pickUps, ConditionalEffects conditional) {

  public static final FaultCase HEALTHY = new FaultCase("healthy", List.of(), Map.of(), Set.of(), Map.of(), Map.of(),
      ConditionalEffects.NONE);

  private static final String AND = " and ";

  /** The name of the case of these faults together. */
  public static String name(List<Fault> together) {
    return together.stream().map(Fault::key).collect(Collectors.joining(AND));
  }

  public static FaultCase of(Fault fault, CircuitNetwork network) {
    var builder = new Builder(network, fault.key());
    fault.effects().forEach(builder::take);
    return new FaultCase(fault.key(), List.copyOf(builder.changes), Map.copyOf(builder.holds),
        Set.copyOf(builder.stopped), Map.copyOf(builder.supplies), Map.copyOf(builder.pickUps),
        new ConditionalEffects(builder.trips, builder.shown, builder.shifted));
  }

  /** What it does to the network alone: cases that have it in common read alike where the same branches conduct. */
  public FaultCase electrical() {
    return new FaultCase("", changes, Map.of(), Set.of(), supplies, pickUps, ConditionalEffects.NONE);
  }

  /**
   * Both faults at once. A contact that one holds open and the other closed is open, and of two voltages of one supply
   * it has the lower.
   */
  public FaultCase and(FaultCase other) {
    var bothHolds = new HashMap<>(holds);
    other.holds.forEach((branch, closed) -> bothHolds.merge(branch, closed, Boolean::logicalAnd));
    var bothSupplies = new HashMap<>(supplies);
    other.supplies.forEach((part, volts) -> bothSupplies.merge(part, volts,
        (one, two) -> one.low() <= two.low() ? one : two));
    var bothPickUps = new HashMap<>(pickUps);
    other.pickUps.forEach((part, volts) -> bothPickUps.merge(part, volts,
        (one, two) -> one.range().high() >= two.range().high() ? one : two));
    var bothStopped = new HashSet<>(stopped);
    bothStopped.addAll(other.stopped);
    return new FaultCase(name + AND + other.name,
        Stream.concat(changes.stream(), other.changes.stream()).toList(), Map.copyOf(bothHolds),
        Set.copyOf(bothStopped), Map.copyOf(bothSupplies), Map.copyOf(bothPickUps),
        conditional.and(other.conditional));
  }

  /**
   * Whether the fault can raise a current. Only these faults can have blown a fuse before the technician arrives.
   */
  public boolean mayBlowFuses() {
    return holds.containsValue(true) || conditional.trips().stream().anyMatch(ConditionalEffects.Trip::closed)
        || changes.stream().anyMatch(change -> change instanceof NetworkChange.Bridge
            || change instanceof NetworkChange.Join || change instanceof NetworkChange.Overload);
  }

  boolean opens(int branch) {
    return changes.contains(new NetworkChange.Open(branch));
  }

  /** Ohms that the fault adds in series with a branch. */
  double raisedOhms(int branch, Draw draw) {
    return raises(branch).mapToDouble(raise -> raise.ohms().at(draw)).sum();
  }

  /** Whether the fault changes the admittance of a source's branch. */
  boolean alters(int branch) {
    return opens(branch) || raises(branch).findAny().isPresent();
  }

  private Stream<NetworkChange.Raise> raises(int branch) {
    return changes.stream().filter(NetworkChange.Raise.class::isInstance).map(NetworkChange.Raise.class::cast)
        .filter(raise -> raise.branch() == branch);
  }

  private static final class Builder {
    private final CircuitNetwork network;
    private final List<NetworkChange> changes = new ArrayList<>();
    private final Map<Integer, Boolean> holds = new HashMap<>();
    private final Set<String> stopped = new HashSet<>();
    private final Map<String, Interval> supplies = new HashMap<>();
    private final Map<String, Spread> pickUps = new HashMap<>();
    private final List<ConditionalEffects.Trip> trips = new ArrayList<>();
    private final List<ConditionalEffects.Shown> shown = new ArrayList<>();
    private final List<ConditionalEffects.Shifted> shifted = new ArrayList<>();
    private final String fault;
    private int number;

    Builder(CircuitNetwork network, String fault) {
      this.network = network;
      this.fault = fault;
    }

    private Spread spread(Interval range) {
      return new Spread(range, fault + " " + number);
    }

    void take(Effect effect) {
      number++;
      if (effect instanceof Effect.Open open) {
        changes.add(new NetworkChange.Open(network.indexOf(open.branch())));
      } else if (effect instanceof Effect.Raise raise) {
        changes.add(new NetworkChange.Raise(network.indexOf(raise.branch()), spread(raise.ohms())));
      } else if (effect instanceof Effect.Bridge bridge) {
        bridge(bridge);
      } else if (effect instanceof Effect.Hold hold) {
        holds.put(network.indexOf(hold.branch()), hold.closed());
      } else if (effect instanceof Effect.Stop stop) {
        stopped.add(stop.part());
      } else if (effect instanceof Effect.Lower lower) {
        supplies.put(lower.part(), lower.volts());
      } else if (effect instanceof Effect.Join join) {
        Spread ohms = spread(join.ohms());
        changes.add(new NetworkChange.Join(network.node(join.a()).orElseThrow(), network.node(join.b()).orElseThrow(),
            draw -> Phasor.of(1 / ohms.at(draw))));
      } else {
        takeWeakness(effect);
      }
    }

    private void takeWeakness(Effect effect) {
      if (effect instanceof Effect.Trip trip) {
        trips.add(new ConditionalEffects.Trip(network.indexOf(trip.branch()), trip.closed(), trip.when()));
      } else if (effect instanceof Effect.Show show) {
        shown.add(new ConditionalEffects.Shown(show.sight(), show.seen(), show.when()));
      } else if (effect instanceof Effect.Shift shift) {
        shifted.add(new ConditionalEffects.Shifted(shift.quantity(), spread(shift.range()), shift.when()));
      } else if (effect instanceof Effect.Derate derate) {
        changes.add(new NetworkChange.Derate(network.indexOf(derate.branch()), spread(derate.share())));
      } else if (effect instanceof Effect.Overload overload) {
        Spread times = spread(overload.times());
        for (int branch : network.branchesOf(overload.part())) {
          changes.add(new NetworkChange.Overload(branch, times));
        }
      } else if (effect instanceof Effect.Stiffen stiffen) {
        pickUps.put(stiffen.part(), spread(stiffen.volts()));
      } else if (effect instanceof Effect.Cross cross) {
        cross(network.indexOf(cross.branch()), network.indexOf(cross.other()));
      } else if (effect instanceof Effect.Weaken weaken) {
        // the core holds a quarter of the windings' ohms; the other three quarters do not change
        Interval core = weaken.times().map(times -> 1 + 4 * (times - 1));
        changes.add(new NetworkChange.Core(coreIndex(weaken.part()), spread(core), 1));
      } else if (effect instanceof Effect.Tap tap) {
        changes.add(NetworkChange.Core.ofRatio(coreIndex(tap.part()), primaryVolts(tap.part()) / tap.primaryVolts()));
      }
    }

    /** Bridges the terminals of the part, because a winding's own branch ends inside its transformer. */
    private void bridge(Effect.Bridge bridge) {
      PartBranch branch = network.system().branch(bridge.branch()).orElseThrow();
      int a = network.node(branch.a()).orElseThrow();
      int b = network.node(branch.b()).orElseThrow();
      changes.add(new NetworkChange.Bridge(network.indexOf(bridge.branch()), a, b, spread(bridge.ohms())));
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
