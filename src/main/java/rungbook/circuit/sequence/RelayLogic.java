package rungbook.circuit.sequence;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.solver.TechnicianOverrides;
import rungbook.system.ControlSystem;
import rungbook.system.Part;

/**
 * How a system moves from one {@link RelayState} to the next. A round is a step of the sequence of operation: what
 * the voltages of the last round pull in changes the contacts of this one.
 */
public final class RelayLogic {

  /** Longer than any sequence of operation; a circuit that is still moving then does not settle. */
  static final int MOST_ROUNDS = 60;

  private final List<Part.Load> loads;
  private final List<Part.Fuse> fuses;
  private final List<Part.State> states;
  private final List<Branch> links;
  private final int[] switchOfLink;
  private final int[] loadOfLink;
  private final int[] fuseOfLink;
  private final ConditionCompiler.Test[] loadTests;
  private final ConditionCompiler.Test[] stateTests;
  private final ConditionCompiler.Test[] resetTests;
  private final ConditionCompiler.Test[] switchTests;
  private final Map<String, ConditionCompiler.Test> sights = new LinkedHashMap<>();

  RelayLogic(CircuitNetwork wiring) {
    ControlSystem system = wiring.system();
    loads = system.parts(Part.Load.class).toList();
    fuses = system.parts(Part.Fuse.class).toList();
    states = system.parts(Part.State.class).toList();
    links = wiring.links();
    loadOfLink = partOfLink(index(loads));
    fuseOfLink = partOfLink(index(fuses));
    var switchIndex = new HashMap<String, Integer>();
    switchOfLink = switches(switchIndex);
    var terms = new ConditionCompiler(index(loads), index(states), switchIndex, index(fuses));
    loadTests = loads.stream().map(load -> terms.test(load.onlyWhen())).toArray(ConditionCompiler.Test[]::new);
    stateTests = states.stream().map(state -> terms.test(state.set())).toArray(ConditionCompiler.Test[]::new);
    resetTests = states.stream().map(state -> state.reset().map(terms::test).orElse(null))
        .toArray(ConditionCompiler.Test[]::new);
    switchTests = switchTests(system, terms);
    system.sights().forEach(seen -> sights.put(rungbook.system.Names.key(seen.name()), terms.test(seen.when())));
  }

  private static Map<String, Integer> index(List<? extends Part> parts) {
    var index = new HashMap<String, Integer>();
    parts.forEach(part -> index.put(part.key(), index.size()));
    return index;
  }

  private int[] partOfLink(Map<String, Integer> parts) {
    return links.stream().mapToInt(link -> parts.getOrDefault(link.part(), -1)).toArray();
  }

  /** Numbers the contacts; a part of several answers to its name with the first. */
  private int[] switches(Map<String, Integer> numbers) {
    int[] ofLink = new int[links.size()];
    int count = 0;
    for (int i = 0; i < ofLink.length; i++) {
      Branch link = links.get(i);
      ofLink[i] = link.kind() == Branch.Kind.SWITCH ? count++ : -1;
      if (ofLink[i] >= 0) {
        numbers.put(link.key(), ofLink[i]);
        numbers.putIfAbsent(link.part(), ofLink[i]);
      }
    }
    return ofLink;
  }

  private ConditionCompiler.Test[] switchTests(ControlSystem system, ConditionCompiler terms) {
    var tests = new HashMap<String, ConditionCompiler.Test>();
    system.parts(Part.Switch.class).forEach(part -> tests.put(part.key(), terms.test(part.closedWhen())));
    return links.stream().filter(link -> link.kind() == Branch.Kind.SWITCH).map(link -> tests.get(link.part()))
        .toArray(ConditionCompiler.Test[]::new);
  }

  List<Part.Load> loads() {
    return loads;
  }

  public List<Part.Fuse> fuses() {
    return fuses;
  }

  int loadOf(int link) {
    return loadOfLink[link];
  }

  int fuseOf(int link) {
    return fuseOfLink[link];
  }

  public List<String> sights() {
    return List.copyOf(sights.keySet());
  }

  public boolean seen(String sight, RelayState standing, CircuitState state) {
    return sights.get(sight).of(standing, state.positions());
  }

  /** Everything dropped out, and the contacts as they stand then. */
  RelayState rest(boolean[] blown, CircuitState state, FaultCase fault) {
    int switches = switchTests.length;
    var rest = new RelayState(new byte[loads.size()], blown.clone(), new boolean[states.size()],
        new byte[states.size()], new boolean[switches]);
    moveContacts(rest, state, fault);
    return rest;
  }

  /**
   * The next moment.
   *
   * @param levels for each load 0 without voltage, 1 energised, 2 enough to hold, 3 enough to pull in
   * @param over whether each fuse carries more than it can
   */
  RelayState next(RelayState now, byte[] levels, boolean[] over, CircuitState state, FaultCase fault) {
    RelayState next = now.copy();
    if (blow(next, over)) {
      return next; // a blown fuse hides every fault behind it, so fuses are settled first
    }
    for (int i = 0; i < levels.length; i++) {
      next.loads[i] = load(i, now, levels[i], state, fault);
    }
    for (int i = 0; i < states.size(); i++) {
      moveState(i, next, state, fault);
    }
    moveContacts(next, state, fault);
    return next;
  }

  private static boolean blow(RelayState next, boolean[] over) {
    boolean any = false;
    for (int i = 0; i < over.length; i++) {
      any |= over[i] && !next.blown[i];
      next.blown[i] |= over[i];
    }
    return any;
  }

  private byte load(int i, RelayState now, byte level, CircuitState state, FaultCase fault) {
    boolean enough = level == 3 || level == 2 && now.loads[i] == RelayState.ON;
    if (enough && !fault.stopped().contains(loads.get(i).key()) && loadTests[i].of(now, state.positions())) {
      return RelayState.ON;
    }
    return level > 0 ? RelayState.HUMMING : RelayState.OFF;
  }

  private void moveState(int i, RelayState next, CircuitState state, FaultCase fault) {
    boolean set = stateTests[i].of(next, state.positions()) && !fault.stopped().contains(states.get(i).key());
    if (resetTests[i] == null) {
      next.states[i] = set;
      return;
    }
    int after = states.get(i).after();
    next.rounds[i] = (byte) (set ? Math.min(after, next.rounds[i] + 1) : 0);
    boolean reset = resetTests[i].of(next, state.positions());
    next.states[i] = !reset && (next.states[i] || next.rounds[i] >= after);
  }

  private void moveContacts(RelayState next, CircuitState state, FaultCase fault) {
    for (int link = 0; link < links.size(); link++) {
      int contact = switchOfLink[link];
      if (contact >= 0) {
        Boolean held = fault.holds().get(link);
        next.closed[contact] = held != null ? held : switchTests[contact].of(next, state.positions());
      }
    }
  }

  /**
   * What each link is in a standing: 0 not there, 1 at rest or closed, 2 on. A contact that does not move does not
   * open by hand.
   */
  byte[] configuration(RelayState standing, TechnicianOverrides arrangement, FaultCase fault) {
    byte[] modes = new byte[links.size()];
    for (int i = 0; i < modes.length; i++) {
      boolean opened = arrangement.opened(i) && !Boolean.TRUE.equals(fault.holds().get(i));
      modes[i] = arrangement.lifted(i) || opened ? 0 : mode(i, standing);
    }
    return modes;
  }

  private byte mode(int link, RelayState standing) {
    return switch (links.get(link).kind()) {
      case FIXED -> 1;
      case SWITCH -> (byte) (standing.closed[switchOfLink[link]] ? 1 : 0);
      case FUSE -> (byte) (standing.blown[fuseOfLink[link]] ? 0 : 1);
      case LOAD -> (byte) (standing.loads[loadOfLink[link]] == RelayState.ON ? 2 : 1);
    };
  }

}
