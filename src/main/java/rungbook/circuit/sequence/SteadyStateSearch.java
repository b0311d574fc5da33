package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.NetworkSolver;
import rungbook.circuit.solver.NetworkStructure;
import rungbook.circuit.solver.SolvedNetwork;

/**
 * Finds the steady states of many cases in many states of the equipment: solves the network, moves the relays, and
 * repeats until nothing changes. All go round by round together, so that each network is solved once in a round for all
 * that are in it. Samples whose relays move alike stay one group.
 */
public final class SteadyStateSearch {

  private final CircuitModel model;
  private final NetworkSolver solver;
  private final Listener listener;
  private final double[] fullShare;
  private final KnownLevels known;
  private Map<byte[], Map<FaultedParameters, List<Group>>> round = new TreeMap<>(Arrays::compare);

  /**
   * Some samples of one case in one state.
   *
   * @param number of the case
   * @param faulted what the case does to the network
   * @param samples indices in the block
   * @param relays in which they begin
   */
  public record Start(int number, FaultCase fault, FaultedParameters faulted, EquipmentState state, int[] samples,
      RelayState relays) {}

  /** Takes what the search finds. */
  public interface Listener {

    /**
     * @param network of the steady state, solved when it is asked for, and valid only during this call; of a circuit
     * that oscillates, any
     */
    void settled(Start start, SteadyState steadyState, Supplier<SolvedNetwork> network);
  }

  /**
   * @param visited since the circuit has settled last
   * @param settled where it has settled so far, while somebody waits
   */
  private record Group(Start start, int[] samples, RelayState relays, List<RelayState> visited,
      List<RelayState> settled) {}

  /**
   * @param solver of the same model, for alternating current, which earlier searches may have used
   * @param known what earlier searches of the same model have found
   * @param wanted nodes whose voltages the listener asks for
   */
  public SteadyStateSearch(CircuitModel model, NetworkSolver solver, KnownLevels known, BitSet wanted,
      Listener listener) {
    this.model = model;
    this.listener = listener;
    this.known = known;
    this.solver = solver;
    BitSet nodes = CircuitModel.decisiveNodes(model.network());
    nodes.or(wanted);
    solver.want(nodes);
    fullShare = new double[model.parameters().size()];
    Arrays.fill(fullShare, 1);
  }

  /** A solver for searches in one structure. */
  public static NetworkSolver solver(CircuitModel model, NetworkStructure structure) {
    return new NetworkSolver(structure, model.parameters(), Current.ALTERNATING, model.healthy(), new BitSet());
  }

  /** Follows all of these to their steady states. */
  public void run(List<Start> starts) {
    for (Start start : starts) {
      enqueue(new Group(start, start.samples(), start.relays(), List.of(start.relays()), List.of()),
          modes(start, start.relays()));
    }
    while (!round.isEmpty()) {
      var now = round;
      round = new TreeMap<>(Arrays::compare);
      now.forEach((modes, cases) -> cases.forEach((faulted, groups) -> step(modes, faulted, groups)));
    }
  }

  private byte[] modes(Start start, RelayState relays) {
    return model.logic().modes(relays, start.state().overrides(), start.fault());
  }

  private void enqueue(Group group, byte[] modes) {
    round.computeIfAbsent(modes, key -> new LinkedHashMap<>())
        .computeIfAbsent(group.start().faulted(), key -> new ArrayList<>()).add(group);
  }

  private void step(byte[] modes, FaultedParameters faulted, List<Group> groups) {
    Cancellation.check();
    var network = new SolvedOnce(modes, faulted);
    LoadLevels levels = known.of(modes, faulted, () -> levels(modes, faulted, network.get()));
    for (Group group : groups) {
      for (int[] alike : levels.split(group.samples())) {
        move(new Group(group.start(), alike, group.relays(), group.visited(), group.settled()), modes, levels, network);
      }
    }
  }

  /** A network that is solved when it is first asked for. */
  private final class SolvedOnce implements Supplier<SolvedNetwork> {

    private final byte[] modes;
    private final FaultedParameters faulted;
    private @Nullable SolvedNetwork solved;

    SolvedOnce(byte[] modes, FaultedParameters faulted) {
      this.modes = modes;
      this.faulted = faulted;
    }

    @Override
    public SolvedNetwork get() {
      if (solved == null) {
        solver.moveTo(modes);
        solved = solver.solve(faulted);
      }
      return solved;
    }
  }

  /** Goes on without solving again while the same branches conduct, as in a delay of several rounds. */
  private void move(Group group, byte[] modes, LoadLevels levels, Supplier<SolvedNetwork> network) {
    Start start = group.start();
    byte[] loads = levels.loadsOf(group.samples()[0]);
    boolean[] fuses = levels.fusesOf(group.samples()[0]);
    RelayState relays = group.relays();
    List<RelayState> visited = new ArrayList<>(group.visited());
    List<RelayState> settled = group.settled();
    while (true) {
      RelayState next = model.logic().next(relays, loads, fuses, start.state().state(), start.fault());
      byte[] nextModes = modes(start, next);
      boolean isSteady = next.equals(relays);
      Optional<RelayState> later = isSteady ? later(next, start, settled) : Optional.empty();
      if (later.isPresent()) {
        settled = Stream.concat(settled.stream(), Stream.of(next.over())).toList();
        visited = new ArrayList<>();
        next = later.get();
      } else if (isSteady || visited.contains(next) || visited.size() > RelayLogic.MOST_ROUNDS) {
        boolean isOver = isSteady && next.waitLeft == 0;
        listener.settled(start, new SteadyState(group.samples(), next.over(), nextModes, isOver), network);
        return;
      }
      visited.add(next);
      if (!Arrays.equals(nextModes, modes)) {
        enqueue(new Group(start, group.samples(), next, visited, settled), nextModes);
        return;
      }
      relays = next;
    }
  }

  /** What follows while somebody waits; nothing once the wait is over, or where timers start each other in a circle. */
  private Optional<RelayState> later(RelayState steady, Start start, List<RelayState> settled) {
    return steady.waitLeft == 0 || settled.size() > RelayLogic.MOST_ROUNDS || settled.contains(steady.over())
        ? Optional.empty() : Optional.of(model.logic().later(steady, start.state().state(), start.fault()));
  }

  private LoadLevels levels(byte[] modes, FaultedParameters faulted, SolvedNetwork network) {
    RelayLogic logic = model.logic();
    var levels = new LoadLevels(logic.loads().size(), logic.fuses().size(), known.rows());
    for (int i : logic.loadBranches()) {
      Branch branch = model.network().branches().get(i);
      int load = logic.loadOf(i);
      double[] onVolts = model.parameters().onVolts(load, branch.part(), faulted.fault());
      levels.updateLoad(load, network.volts(), branch, share(i, BranchMode.conduction(modes[i]), faulted), onVolts,
          model.parameters().offVolts[load], logic.loads().get(load).humShare());
    }
    for (int i : logic.fuseBranches()) {
      if (BranchMode.conduction(modes[i]) != BranchMode.ABSENT && !faulted.opens(i)) {
        var fuse = logic.fuses().get(logic.fuseOf(i));
        double most = fuse.ratedAmps() * fuse.opensAtTimes();
        levels.updateFuse(logic.fuseOf(i), network.volts(), faulted.effective(i, model.parameters().on), most);
      }
    }
    return levels;
  }

  /** The share of a branch's voltage that its load gets, for each sample: none if it is disconnected. */
  private double[] share(int branch, byte conduction, FaultedParameters faulted) {
    if (conduction == BranchMode.ABSENT) {
      return new double[model.parameters().size()];
    }
    return faulted.touches(branch) ? faulted.share(branch, model.parameters().alternating(conduction)) : fullShare;
  }
}
