package rungbook.circuit.sequence;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.Network;

/**
 * Follows one case of a {@link StateSolver} until nothing moves any more, all samples together as long as they move
 * alike.
 */
public final class SteadyStateSearch implements AutoCloseable {

  /** Times its rating a fuse carries for good (UL 248-14 has it open at 135 % within an hour; from memory). */
  static final double FUSE_FACTOR = 1.35;

  /**
   * Times its rating at which a breaker trips at once; a motor that starts stays below (common practice, no source).
   */
  static final double BREAKER_FACTOR = 5;

  /** A coil hums from this share of its pick-up voltage (common practice, no source). */
  private static final double HUM_SHARE = 0.3;

  private final StateSolver run;
  private final CircuitModel plant;
  private final FaultCase fault;
  private final FaultedParameters altered;
  private final Map<ByteBuffer, Network> networks = new HashMap<>();
  private final Map<ByteBuffer, Network> direct = new HashMap<>();
  private final List<SteadyState> settled = new ArrayList<>();
  private final Deque<Group> moving = new ArrayDeque<>();

  private record Group(int[] samples, RelayState standing, Set<RelayState> before) {}

  public SteadyStateSearch(StateSolver run, FaultCase fault) {
    this.run = run;
    this.plant = run.plant();
    this.fault = fault;
    this.altered = new FaultedParameters(plant.wiring(), plant.sampled(), fault);
  }

  public FaultCase fault() {
    return fault;
  }

  public FaultedParameters altered() {
    return altered;
  }

  @Override
  public void close() {
    networks.values().forEach(run::release);
    direct.values().forEach(run::release);
  }

  /** What a direct current sees in a configuration. */
  public Network direct(byte[] modes) {
    return direct.computeIfAbsent(ByteBuffer.wrap(modes), key -> run.direct(modes, altered));
  }

  /** The network a configuration has in this case. */
  public Network network(byte[] modes) {
    return networks.computeIfAbsent(ByteBuffer.wrap(modes), key -> run.alternating(modes, fault, altered));
  }

  /** @param blown for each sample, which fuses are open from the start */
  public List<SteadyState> from(boolean[][] blown) {
    byFuses(blown).forEach((key, samples) -> {
      RelayState rest = run.rest(blown[samples[0]], fault);
      moving.push(new Group(samples, rest, new HashSet<>(Set.of(rest))));
    });
    while (!moving.isEmpty()) {
      Cancellation.check();
      step(moving.pop());
    }
    return settled;
  }

  private static Map<String, int[]> byFuses(boolean[][] blown) {
    var groups = new HashMap<String, List<Integer>>();
    for (int s = 0; s < blown.length; s++) {
      groups.computeIfAbsent(java.util.Arrays.toString(blown[s]), key -> new ArrayList<>()).add(s);
    }
    var arrays = new java.util.TreeMap<String, int[]>();
    groups.forEach((key, samples) -> arrays.put(key, samples.stream().mapToInt(Integer::intValue).toArray()));
    return arrays;
  }

  private void step(Group group) {
    byte[] modes = run.modes(group.standing(), fault);
    LoadLevels levels = levels(modes, network(modes));
    for (int[] alike : levels.split(group.samples())) {
      RelayState next = run.next(group.standing(), levels.loadsOf(alike[0]), levels.fusesOf(alike[0]), fault);
      move(new Group(alike, group.standing(), group.before()), next, modes);
    }
  }

  private void move(Group group, RelayState next, byte[] modes) {
    if (next.equals(group.standing())) {
      settled.add(new SteadyState(group.samples(), next, modes, true));
    } else if (group.before().contains(next) || group.before().size() > RelayLogic.MOST_ROUNDS) {
      settled.add(new SteadyState(group.samples(), next, run.modes(next, fault), false));
    } else {
      var before = new HashSet<>(group.before());
      before.add(next);
      moving.push(new Group(group.samples(), next, before));
    }
  }

  private LoadLevels levels(byte[] modes, Network network) {
    RelayLogic logic = plant.logic();
    var levels = new LoadLevels(logic.loads().size(), logic.fuses().size(), plant.sampled().size());
    for (int i = 0; i < modes.length; i++) {
      Branch link = plant.wiring().links().get(i);
      if (link.kind() == Branch.Kind.LOAD) {
        note(i, link, modes[i], network, levels);
      } else if (link.kind() == Branch.Kind.FUSE && modes[i] > 0 && !altered.opens(i)) {
        var fuse = logic.fuses().get(logic.fuseOf(i));
        double most = fuse.ratedAmps() * (fuse.breaker() ? BREAKER_FACTOR : FUSE_FACTOR);
        levels.noteFuse(logic.fuseOf(i), network.volts(), altered.effective(i, plant.sampled().on), most);
      }
    }
    return levels;
  }

  private void note(int i, Branch link, byte mode, Network network, LoadLevels levels) {
    int load = plant.logic().loadOf(i);
    boolean whole = mode > 0 && !altered.touches(i);
    double[] share = mode == 0 ? new double[plant.sampled().size()]
        : whole ? null : altered.share(i, plant.sampled().alternating(mode));
    levels.noteLoad(load, network.volts(), link, share, plant.sampled().onVolts[load], plant.sampled().offVolts[load],
        HUM_SHARE);
  }

  public static boolean[][] noneBlown(CircuitModel plant) {
    return IntStream.range(0, plant.sampled().size()).mapToObj(s -> new boolean[plant.logic().fuses().size()])
        .toArray(boolean[][]::new);
  }
}
