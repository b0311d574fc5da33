package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.TransformerCore;
import rungbook.system.Condition;
import rungbook.system.Part;

/**
 * What makes a system depend on what it did before: states that are set and reset, and loads that are fed through a
 * contact which the load itself moves, directly or through others, as a seal-in contact is.
 */
public final class HoldingCircuits {

  private final CircuitNetwork network;
  private final ConductorGraph conductors;
  private final Map<String, String> partOf = new HashMap<>();

  private HoldingCircuits(CircuitNetwork network) {
    this.network = network;
    conductors = new ConductorGraph(network);
    network.system().parts().forEach(part -> {
      partOf.put(part.key(), part.key());
      part.branches().forEach(branch -> partOf.putIfAbsent(branch.key(), part.key()));
    });
  }

  /** Whether what the equipment does may depend on what it did before, or on how long ago. */
  public static boolean anyIn(CircuitNetwork network) {
    return hasDelays(network) || network.system().parts(Part.Switch.class).anyMatch(Part.Switch::manualReset)
        || !partsOf(network).isEmpty();
  }

  public static boolean hasDelays(CircuitNetwork network) {
    return network.system().parts(Part.State.class).anyMatch(state -> state.delay().isPresent());
  }

  /** The keys of the parts that can hold themselves or each other. */
  public static Set<String> partsOf(CircuitNetwork network) {
    Set<String> holding = new HoldingCircuits(network).circles();
    network.system().parts(Part.State.class).filter(state -> state.reset().isPresent())
        .forEach(state -> holding.add(state.key()));
    return holding;
  }

  /** Takes away what needs nothing that is left, and what nothing needs; the circles and what is between remain. */
  private Set<String> circles() {
    Map<String, Set<String>> needs = new HashMap<>();
    network.system().parts().forEach(part -> needs.put(part.key(), needs(part)));
    boolean isLess = true;
    while (isLess) {
      isLess = needs.values().removeIf(needed -> needed.stream().noneMatch(needs::containsKey));
      Set<String> needed = needs.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
      isLess |= needs.keySet().removeIf(key -> !needed.contains(key));
    }
    return new HashSet<>(needs.keySet());
  }

  /** The keys of the parts that decide what a part does. */
  private Set<String> needs(Part part) {
    var needed = new HashSet<String>();
    conditions(part).forEach(condition -> condition.eachTerm(term -> {
      String asked = partOf.get(asked(term));
      if (asked != null) {
        needed.add(asked);
      }
    }));
    if (part instanceof Part.Load load) {
      feeding(load).stream().mapToObj(network.branches()::get)
          .filter(branch -> branch.kind() == Branch.Kind.SWITCH).forEach(branch -> needed.add(branch.part()));
    }
    return needed;
  }

  private static Stream<Condition> conditions(Part part) {
    if (part instanceof Part.Switch contact) {
      return Stream.of(contact.closedWhen());
    }
    if (part instanceof Part.State state) {
      return Stream.of(state.set());
    }
    return part instanceof Part.Load load ? Stream.of(load.onlyWhen()) : Stream.of();
  }

  private static String asked(Condition term) {
    if (term instanceof Condition.On on) {
      return on.name();
    }
    if (term instanceof Condition.Humming humming) {
      return humming.name();
    }
    return term instanceof Condition.Closed closed ? closed.name() : "";
  }

  /** The branches of the circuits that feed a load, through transformers too. */
  private BitSet feeding(Part.Load load) {
    var feeding = new BitSet();
    for (int i : network.branchesOf(load.key())) {
      Branch branch = network.branches().get(i);
      feeding.or(conductors.between(branch.a(), branch.b(), List.of()));
    }
    var cores = new ArrayList<>(network.cores());
    while (cores.removeIf(core -> addPrimary(core, feeding))) {
      // a primary may be on another transformer's secondary
    }
    return feeding;
  }

  private boolean addPrimary(TransformerCore core, BitSet feeding) {
    boolean isFed = feeding.stream().mapToObj(network.branches()::get)
        .anyMatch(branch -> branch.a() == core.sa() || branch.b() == core.sa());
    if (isFed) {
      feeding.or(conductors.between(core.pa(), core.pb(), List.of()));
    }
    return isFed;
  }
}
