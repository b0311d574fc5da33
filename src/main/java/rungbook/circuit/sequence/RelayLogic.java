package rungbook.circuit.sequence;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Past;
import rungbook.circuit.network.Spread;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.TechnicianOverrides;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;

/**
 * Computes the next {@link RelayState} from the present one. A round is one step of the sequence of operation: the
 * loads that pulled in at the voltages of the last round move the contacts of this one.
 */
public final class RelayLogic {

  /** More rounds than any sequence of operation has; a circuit that still changes then has no steady state. */
  static final int MOST_ROUNDS = 60;

  private final List<Part.Load> loads;
  private final List<Part.Fuse> fuses;
  private final List<Part.State> states;
  private final List<String> loadKeys;
  private final List<String> stateKeys;
  private final List<Branch> branches;
  private final int[] switchOfBranch;
  private final int[] loadOfBranch;
  private final int[] fuseOfBranch;
  private final int[] loadBranches;
  private final int[] fuseBranches;
  private final int[] switchBranches;
  private final Branch.Kind[] kinds;
  private final ConditionCompiler.Test[] loadTests;
  private final ConditionCompiler.Test[] stateTests;
  private final List<Optional<ConditionCompiler.Test>> resetTests;
  private final ConditionCompiler.Test[] switchTests;
  private final List<String> sights;
  private final List<ConditionCompiler.Test> sightTests;
  private final QuantityLogic quantities;
  private final ConditionalLogic conditional;
  private final ManualResets resets;
  private final Delays delays;
  private final Remembered remembered;

  public RelayLogic(CircuitNetwork network) {
    ControlSystem system = network.system();
    loads = system.parts(Part.Load.class).toList();
    fuses = system.parts(Part.Fuse.class).toList();
    states = system.parts(Part.State.class).toList();
    loadKeys = loads.stream().map(Part::key).toList();
    stateKeys = states.stream().map(Part::key).toList();
    branches = network.branches();
    loadOfBranch = partOfBranch(index(loads));
    fuseOfBranch = partOfBranch(index(fuses));
    loadBranches = branchesOf(Branch.Kind.LOAD);
    fuseBranches = branchesOf(Branch.Kind.FUSE);
    switchBranches = branchesOf(Branch.Kind.SWITCH);
    kinds = branches.stream().map(Branch::kind).toArray(Branch.Kind[]::new); // asked for in every round
    var switchIndex = new HashMap<String, Integer>();
    switchOfBranch = switches(switchIndex);
    var compiler = new ConditionCompiler(index(loads), index(states), switchIndex, index(fuses));
    loadTests = loads.stream().map(load -> compiler.test(load.onlyWhen())).toArray(ConditionCompiler.Test[]::new);
    stateTests = states.stream().map(state -> compiler.test(state.set())).toArray(ConditionCompiler.Test[]::new);
    resetTests = states.stream().map(state -> state.reset().map(compiler::test)).toList();
    switchTests = switchTests(system, compiler);
    var testBySight = new LinkedHashMap<String, ConditionCompiler.Test>();
    system.sights().forEach(sight -> testBySight.put(Names.key(sight.name()), compiler.test(sight.when())));
    sights = List.copyOf(testBySight.keySet());
    sightTests = List.copyOf(testBySight.values());
    quantities = new QuantityLogic(system.quantities(), compiler);
    conditional = new ConditionalLogic(system.faults(), compiler);
    resets = new ManualResets(network, fuses.size());
    delays = new Delays(states);
    remembered = new Remembered(network, Stream.concat(fuses.stream().map(Part::key), resets.keys().stream()).toList());
  }

  private static Map<String, Integer> index(List<? extends Part> parts) {
    var index = new HashMap<String, Integer>();
    parts.forEach(part -> index.put(part.key(), index.size()));
    return index;
  }

  private int[] partOfBranch(Map<String, Integer> parts) {
    return branches.stream().mapToInt(branch -> parts.getOrDefault(branch.part(), -1)).toArray();
  }

  private int[] branchesOf(Branch.Kind kind) {
    return IntStream.range(0, branches.size()).filter(i -> branches.get(i).kind() == kind).toArray();
  }

  /** Numbers the contacts by branch key; the key of a part with several contacts means its first. */
  private int[] switches(Map<String, Integer> numbers) {
    int[] ofBranch = new int[branches.size()];
    int count = 0;
    for (int i = 0; i < ofBranch.length; i++) {
      Branch branch = branches.get(i);
      ofBranch[i] = branch.kind() == Branch.Kind.SWITCH ? count++ : -1;
      if (ofBranch[i] >= 0) {
        numbers.put(branch.key(), ofBranch[i]);
        numbers.putIfAbsent(branch.part(), ofBranch[i]);
      }
    }
    return ofBranch;
  }

  private ConditionCompiler.Test[] switchTests(ControlSystem system, ConditionCompiler compiler) {
    var tests = new HashMap<String, ConditionCompiler.Test>();
    system.parts(Part.Switch.class).forEach(part -> tests.put(part.key(), compiler.test(part.closedWhen())));
    return branches.stream().filter(branch -> branch.kind() == Branch.Kind.SWITCH)
        .map(branch -> tests.get(branch.part()))
        .toArray(ConditionCompiler.Test[]::new);
  }

  List<Part.Load> loads() {
    return loads;
  }

  List<Part.Fuse> fuses() {
    return fuses;
  }

  /** What the equipment keeps from one change to the next. */
  public Remembered remembered() {
    return remembered;
  }

  int loadOf(int branch) {
    return loadOfBranch[branch];
  }

  int fuseOf(int branch) {
    return fuseOfBranch[branch];
  }

  /** The branches of loads, by index. */
  int[] loadBranches() {
    return loadBranches;
  }

  /** The branches of fuses and breakers, by index. */
  int[] fuseBranches() {
    return fuseBranches;
  }

  /** The keys of the sights. */
  public List<String> sights() {
    return sights;
  }

  /** Whether a sight, by its index in {@link #sights}, is seen. */
  public boolean seen(int sight, RelayState relays, CircuitState state, FaultCase fault) {
    boolean bySystem = sightTests.get(sight).of(relays, state.positions());
    return conditional.seen(sights.get(sight), bySystem, relays, state, fault);
  }

  /** The range in which a quantity outside the circuit is, by its key; empty if there is no reading. */
  public Optional<Spread> range(String quantity, RelayState relays, CircuitState state, FaultCase fault) {
    return conditional.range(quantity, quantities.range(quantity, relays, state), relays, state, fault);
  }

  /** The state with every load off, and its contacts; from there, every delay runs out. */
  public RelayState dropped(boolean[] blown, CircuitState state, FaultCase fault) {
    var initial = new RelayState(new byte[loads.size()], blown.clone(),
        new boolean[states.size() + conditional.trips()], new byte[states.size()], new boolean[switchTests.length],
        delays.none(), delays.waitOfStart());
    moveContacts(initial, state, fault);
    return initial;
  }

  /**
   * The state in which the equipment begins when a technician has changed something.
   *
   * @param before in which it was left
   * @param state that comes from another
   */
  public RelayState begun(RelayState before, CircuitState state, FaultCase fault) {
    Past past = state.past().orElseThrow();
    boolean[] blown = remembered.intact(before.blown, past.renewed());
    if (remembered.isNewRun(past.before(), state)) {
      return dropped(blown, state, fault);
    }
    RelayState begun = before.withFuses(blown).waiting(delays.any() ? past.waitSeconds() : 0);
    Arrays.fill(begun.states, states.size(), begun.states.length, false); // what has tripped closes again
    moveContacts(begun, state, fault);
    return begun;
  }

  /**
   * The state of the next round.
   *
   * @param levels of each load: 0 without voltage, 1 humming, 2 enough to hold, 3 enough to pull in
   * @param overloaded whether each fuse carries too much current
   */
  RelayState next(RelayState now, byte[] levels, boolean[] overloaded, CircuitState state, FaultCase fault) {
    RelayState next = now.copy();
    if (blow(next, overloaded)) {
      return next; // fuses first: a blown fuse removes the voltage that would move the other parts
    }
    for (int i = 0; i < levels.length; i++) {
      next.loads[i] = load(i, now, levels[i], state, fault);
    }
    for (int i = 0; i < states.size(); i++) {
      moveState(i, next, state, fault);
    }
    conditional.trip(next, states.size(), state, fault);
    moveContacts(next, state, fault);
    resets.trip(next, switchOfBranch);
    return next;
  }

  /**
   * The same relays at the end of the next delay, or of the wait.
   *
   * @param settled relays that move no more by themselves
   */
  RelayState later(RelayState settled, CircuitState state, FaultCase fault) {
    return delays.later(settled, i -> isSet(i, settled, state, fault));
  }

  private static boolean blow(RelayState next, boolean[] overloaded) {
    boolean any = false;
    for (int i = 0; i < overloaded.length; i++) {
      any |= overloaded[i] && !next.blown[i];
      next.blown[i] |= overloaded[i];
    }
    return any;
  }

  private byte load(int i, RelayState now, byte level, CircuitState state, FaultCase fault) {
    boolean enough = level == 3 || (level == 2 && now.loads[i] == RelayState.ON);
    if (enough && !fault.stopped().contains(loadKeys.get(i)) && loadTests[i].of(now, state.positions())) {
      return RelayState.ON;
    }
    return level > 0 ? RelayState.HUMMING : RelayState.OFF;
  }

  private void moveState(int i, RelayState next, CircuitState state, FaultCase fault) {
    boolean set = isSet(i, next, state, fault);
    if (delays.isTimed(i)) {
      delays.move(i, set, next);
      return;
    }
    Optional<ConditionCompiler.Test> resetTest = resetTests.get(i);
    if (resetTest.isEmpty()) {
      next.states[i] = set;
      return;
    }
    int after = states.get(i).after();
    next.rounds[i] = (byte) (set ? Math.min(after, next.rounds[i] + 1) : 0);
    boolean reset = resetTest.get().of(next, state.positions());
    next.states[i] = !reset && (next.states[i] || next.rounds[i] >= after);
  }

  private boolean isSet(int i, RelayState relays, CircuitState state, FaultCase fault) {
    return stateTests[i].of(relays, state.positions()) && !fault.stopped().contains(stateKeys.get(i));
  }

  private void moveContacts(RelayState next, CircuitState state, FaultCase fault) {
    for (int branch : switchBranches) {
      int contact = switchOfBranch[branch];
      Boolean tripped = conditional.tripped(branch, next, states.size(), fault);
      Boolean held = (tripped != null || fault.holds().isEmpty()) ? tripped : fault.holds().get(branch);
      next.closed[contact] = held != null ? held
          : !resets.isTripped(branch, next) && switchTests[contact].of(next, state.positions());
    }
  }

  /** The {@link BranchMode} of each branch. A contact that is stuck closed does not open by hand either. */
  byte[] modes(RelayState relays, TechnicianOverrides overrides, FaultCase fault) {
    byte[] modes = new byte[kinds.length];
    for (int i = 0; i < modes.length; i++) {
      boolean opened = overrides.opened(i) && !Boolean.TRUE.equals(fault.holds().get(i));
      modes[i] = BranchMode.with(opened ? BranchMode.ABSENT : conduction(i, relays), overrides.jumpered(i),
          overrides.disconnected(i));
    }
    return modes;
  }

  private byte conduction(int branch, RelayState relays) {
    return switch (kinds[branch]) {
      case FIXED -> BranchMode.CLOSED;
      case SWITCH -> relays.closed[switchOfBranch[branch]] ? BranchMode.CLOSED : BranchMode.ABSENT;
      case FUSE -> relays.blown[fuseOfBranch[branch]] ? BranchMode.ABSENT : BranchMode.CLOSED;
      case LOAD -> relays.loads[loadOfBranch[branch]] == RelayState.ON ? BranchMode.ON : BranchMode.CLOSED;
    };
  }
}
