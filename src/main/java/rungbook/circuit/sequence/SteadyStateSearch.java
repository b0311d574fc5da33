package rungbook.circuit.sequence;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.Network;

/**
 * Finds the steady states of one case: solves the network, moves the relays, and repeats until nothing changes. Samples
 * whose relays move alike are solved as one group.
 */
public final class SteadyStateSearch implements AutoCloseable {

  private final StateSolver solver;
  private final CircuitModel model;
  private final FaultCase fault;
  private final FaultedParameters faulted;
  private final Map<ByteBuffer, Network> networks = new HashMap<>();
  private final Map<ByteBuffer, Network> direct = new HashMap<>();
  private final List<SteadyState> found = new ArrayList<>();
  private final Deque<Group> pending = new ArrayDeque<>();
  private final double[] fullShare;

  private record Group(int[] samples, RelayState relays, Set<RelayState> visited) {}

  public SteadyStateSearch(StateSolver solver, FaultCase fault) {
    this.solver = solver;
    this.model = solver.model();
    this.fault = fault;
    this.faulted = new FaultedParameters(model.network(), model.parameters(), fault);
    fullShare = new double[model.parameters().size()];
    Arrays.fill(fullShare, 1);
  }

  public FaultCase fault() {
    return fault;
  }

  public FaultedParameters faulted() {
    return faulted;
  }

  @Override
  public void close() {
    networks.values().forEach(solver::release);
    direct.values().forEach(solver::release);
  }

  /** The network for direct current in these modes. */
  public Network direct(byte[] modes) {
    return direct.computeIfAbsent(ByteBuffer.wrap(modes), key -> solver.direct(modes, faulted));
  }

  /** The network for alternating current in these modes. */
  public Network network(byte[] modes) {
    return networks.computeIfAbsent(ByteBuffer.wrap(modes), key -> solver.alternating(modes, fault, faulted));
  }

  /**
   * Searches from every load off.
   *
   * @param blown the fuses that are blown at the start, [sample][fuse]
   */
  public List<SteadyState> from(boolean[][] blown) {
    groupByFuses(blown).forEach((key, samples) -> {
      RelayState initial = solver.initial(blown[samples[0]], fault);
      pending.push(new Group(samples, initial, new HashSet<>(Set.of(initial))));
    });
    while (!pending.isEmpty()) {
      Cancellation.check();
      step(pending.pop());
    }
    return found;
  }

  private static Map<String, int[]> groupByFuses(boolean[][] blown) {
    var groups = new HashMap<String, List<Integer>>();
    for (int s = 0; s < blown.length; s++) {
      groups.computeIfAbsent(Arrays.toString(blown[s]), key -> new ArrayList<>()).add(s);
    }
    var arrays = new TreeMap<String, int[]>();
    groups.forEach((key, samples) -> arrays.put(key, samples.stream().mapToInt(Integer::intValue).toArray()));
    return arrays;
  }

  private void step(Group group) {
    byte[] modes = solver.modes(group.relays(), fault);
    LoadLevels levels = levels(modes, network(modes));
    for (int[] alike : levels.split(group.samples())) {
      RelayState next = solver.next(group.relays(), levels.loadsOf(alike[0]), levels.fusesOf(alike[0]), fault);
      move(new Group(alike, group.relays(), group.visited()), next, modes);
    }
  }

  private void move(Group group, RelayState next, byte[] modes) {
    if (next.equals(group.relays())) {
      found.add(new SteadyState(group.samples(), next, modes, true));
    } else if (group.visited().contains(next) || group.visited().size() > RelayLogic.MOST_ROUNDS) {
      found.add(new SteadyState(group.samples(), next, solver.modes(next, fault), false));
    } else {
      var visited = new HashSet<>(group.visited());
      visited.add(next);
      pending.push(new Group(group.samples(), next, visited));
    }
  }

  private LoadLevels levels(byte[] modes, Network network) {
    RelayLogic logic = model.logic();
    var levels = new LoadLevels(logic.loads().size(), logic.fuses().size(), model.parameters().size());
    for (int i = 0; i < modes.length; i++) {
      Branch branch = model.network().branches().get(i);
      if (branch.kind() == Branch.Kind.LOAD) {
        updateLoad(i, branch, modes[i], network, levels);
      } else if (branch.kind() == Branch.Kind.FUSE && modes[i] > 0 && !faulted.opens(i)) {
        var fuse = logic.fuses().get(logic.fuseOf(i));
        double most = fuse.ratedAmps() * fuse.opensAtTimes();
        levels.updateFuse(logic.fuseOf(i), network.volts(), faulted.effective(i, model.parameters().on), most);
      }
    }
    return levels;
  }

  private void updateLoad(int i, Branch branch, byte mode, Network network, LoadLevels levels) {
    int load = model.logic().loadOf(i);
    double[] onVolts = model.parameters().onVolts(load, branch.part(), fault);
    levels.updateLoad(load, network.volts(), branch, share(i, mode), onVolts, model.parameters().offVolts[load],
        model.logic().loads().get(load).humShare());
  }

  /** The share of a branch's voltage that its load gets, for each sample: none if it is disconnected. */
  private double[] share(int branch, byte mode) {
    if (mode == 0) {
      return new double[model.parameters().size()];
    }
    return faulted.touches(branch) ? faulted.share(branch, model.parameters().alternating(mode)) : fullShare;
  }

  /** No fuse blown, [sample][fuse]. */
  public static boolean[][] noneBlown(CircuitModel model) {
    return IntStream.range(0, model.parameters().size()).mapToObj(s -> new boolean[model.logic().fuses().size()])
        .toArray(boolean[][]::new);
  }
}
