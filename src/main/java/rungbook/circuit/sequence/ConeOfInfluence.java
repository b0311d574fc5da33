package rungbook.circuit.sequence;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.TransformerCore;
import rungbook.system.Condition;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/**
 * Which controls decide whether a fault carries a current, or trips a switch with manual reset: those in the conditions
 * of the contacts that the current passes, and in turn of the contacts that the loads and states in these conditions
 * depend on.
 */
public final class ConeOfInfluence {

  private final CircuitNetwork network;
  private final ConductorGraph conductors;
  private final Map<String, Part> parts = new HashMap<>();
  private final Map<String, BitSet> loops = new HashMap<>();

  public ConeOfInfluence(CircuitNetwork network) {
    this.network = network;
    conductors = new ConductorGraph(network);
    network.system().parts().forEach(part -> parts.putIfAbsent(part.key(), part));
    network.branches().forEach(branch -> {
      Part part = parts.get(branch.part());
      if (part != null) {
        parts.putIfAbsent(branch.key(), part);
      }
    });
  }

  /** The controls with positions that a fault's currents depend on, in the system's order. */
  public List<Vocabulary.Control> of(FaultCase fault) {
    Set<String> controls = new Search(fault).controls();
    return network.system().vocabulary().controls().entrySet().stream()
        .filter(control -> controls.contains(control.getKey())).map(Map.Entry::getValue)
        .filter(control -> !control.positions().isEmpty()).toList();
  }

  /** One fault's search. Each load, state and contact is followed once. */
  private final class Search {

    private final FaultCase fault;
    private final List<int[]> extras = new ArrayList<>();
    private final Set<String> controls = new HashSet<>();
    private final Set<String> seen = new HashSet<>();
    private final Deque<Condition> pending = new ArrayDeque<>();

    Search(FaultCase fault) {
      this.fault = fault;
      for (NetworkChange change : fault.changes()) {
        if (change instanceof NetworkChange.Bridge bridge) {
          extras.add(new int[] {bridge.a(), bridge.b()});
        } else if (change instanceof NetworkChange.Join join) {
          extras.add(new int[] {join.a(), join.b()});
        }
      }
    }

    Set<String> controls() {
      extras.forEach(pair -> pass(conductors.between(pair[0], pair[1], extras)));
      fault.holds().keySet().forEach(this::passThrough);
      fault.changes().forEach(this::passChanged);
      fault.conditional().trips().forEach(trip -> passThrough(trip.branch()));
      fault.conditional().conditions().forEach(pending::push);
      fault.stopped().forEach(this::follow);
      network.system().parts(Part.Switch.class).filter(Part.Switch::manualReset)
          .forEach(contact -> follow(contact.key()));
      while (!pending.isEmpty()) {
        pending.pop().eachTerm(this::take);
      }
      return controls;
    }

    private void passChanged(NetworkChange change) {
      if (change instanceof NetworkChange.Open open) {
        passThrough(open.branch());
      } else if (change instanceof NetworkChange.Raise raise) {
        passThrough(raise.branch());
      } else if (change instanceof NetworkChange.Derate derate) {
        passThrough(derate.branch());
      } else if (change instanceof NetworkChange.Overload overload) {
        passThrough(overload.branch());
      } else if (change instanceof NetworkChange.Core core) {
        TransformerCore changed = network.cores().get(core.index());
        pass(conductors.between(changed.pa(), changed.pb(), extras));
        network.system().parts(Part.Load.class).map(this::loop).filter(loop -> isFed(changed.sa(), loop))
            .forEach(this::pass);
      }
    }

    /** A branch passes the current of each load in whose circuit it lies, and of its own if it is one. */
    private void passThrough(int branch) {
      Branch passed = network.branches().get(branch);
      pass(conductors.between(passed.a(), passed.b(), extras));
      network.system().parts(Part.Load.class).map(this::loop).filter(loop -> loop.get(branch)).forEach(this::pass);
      follow(passed.part());
    }

    /** The branches of the circuit that feeds a load. */
    private BitSet loop(Part.Load load) {
      return extras.isEmpty() ? loops.computeIfAbsent(load.key(), key -> newLoop(load)) : newLoop(load);
    }

    private BitSet newLoop(Part.Load load) {
      var loop = new BitSet();
      for (int i : network.branchesOf(load.key())) {
        Branch branch = network.branches().get(i);
        loop.or(conductors.between(branch.a(), branch.b(), extras));
      }
      return loop;
    }

    private void pass(BitSet branches) {
      branches.stream().mapToObj(network.branches()::get).filter(branch -> branch.kind() == Branch.Kind.SWITCH)
          .forEach(branch -> follow(branch.part()));
      network.cores().stream().filter(core -> isFed(core.sa(), branches) && seen.add("core of " + core.part()))
          .forEach(core -> pass(conductors.between(core.pa(), core.pb(), extras)));
    }

    private boolean isFed(int node, BitSet branches) {
      return branches.stream().mapToObj(network.branches()::get)
          .anyMatch(branch -> branch.a() == node || branch.b() == node);
    }

    private void take(Condition term) {
      if (term instanceof Condition.Selected selected) {
        controls.add(selected.control());
      } else if (term instanceof Condition.On on) {
        follow(on.name());
      } else if (term instanceof Condition.Humming humming) {
        follow(humming.name());
      } else if (term instanceof Condition.Closed closed) {
        follow(closed.name());
      }
    }

    private void follow(String name) {
      Part part = parts.get(name);
      if (part == null || !seen.add(part.key())) {
        return;
      }
      if (part instanceof Part.Switch contact) {
        pending.push(contact.closedWhen());
      } else if (part instanceof Part.State state) {
        pending.push(state.set());
        state.reset().ifPresent(pending::push);
      } else if (part instanceof Part.Load load) {
        pending.push(load.onlyWhen());
        pass(loop(load));
      }
    }
  }
}
