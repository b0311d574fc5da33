package rungbook.rules.flow;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves a forward may-analysis of up to 64 facts: which facts hold on some path to a step. A step's transfer function
 * is {@code out = (in - kill) + gen}; a way can have one too; where ways meet, the sets are joined. (A fact must hold
 * if its negation holds on no path.) The transfer functions distribute over joins, so the result is the same as
 * following each path separately.
 */
public final class DataflowSolver {

  private final FlowGraph graph;
  private final long start;
  private final long[] gen;
  private final long[] kill;
  private final long @Nullable [] wayGen;
  private final long @Nullable [] wayKill;
  private final long[] in;

  private DataflowSolver(FlowGraph graph, long start, long[] gen, long[] kill, long @Nullable [] wayGen,
      long @Nullable [] wayKill) {
    this.graph = graph;
    this.start = start;
    this.gen = gen;
    this.kill = kill;
    this.wayGen = wayGen;
    this.wayKill = wayKill;
    this.in = new long[graph.size()];
  }

  /**
   * @param start what holds before the first step
   * @param gen by step, what it adds
   * @param kill by step, what it removes first
   * @param wayGen by way, what it adds; null if no way does
   * @param wayKill by way, what it removes first; null if no way does
   */
  public static DataflowSolver solve(FlowGraph graph, long start, long[] gen, long[] kill,
      long @Nullable [] wayGen, long @Nullable [] wayKill) {
    DataflowSolver flow = new DataflowSolver(graph, start, gen, kill, wayGen, wayKill);
    flow.run();
    return flow;
  }

  /** The facts that hold on some path on entry to a step. */
  public long at(int step) {
    return in[step];
  }

  /** The ways of a short path from the first step to a step, on which a fact (one bit) holds at the end. */
  public int[] pathTo(int step, long fact) {
    int[] toward = new int[graph.size()];
    Arrays.fill(toward, -1);
    boolean[] seen = new boolean[graph.size()];
    int[] queue = new int[graph.size()];
    int tail = 1;
    queue[0] = step;
    seen[step] = true;
    for (int head = 0; head < tail; head++) {
      int at = queue[head];
      if (at == 0 && (start & fact) != 0) {
        return along(new int[0], 0, toward, step);
      }
      for (int i = graph.firstInto(at); i < graph.firstInto(at + 1); i++) {
        int way = graph.into()[i];
        int before = graph.from(way);
        if (begins(way, fact)) {
          return begun(way, toward, step);
        }
        if (!seen[before] && passes(way, fact)) {
          seen[before] = true;
          toward[before] = way;
          queue[tail++] = before;
        }
      }
    }
    throw new IllegalStateException("no path on which the fact holds");
  }

  private void run() {
    int[] order = graph.order();
    if (order.length == 0) {
      return;
    }
    in[0] = start;
    boolean changed = sweep(order);
    while (changed && graph.isCircular()) {
      changed = sweep(order);
    }
  }

  private boolean sweep(int[] order) {
    boolean changed = false;
    for (int step : order) {
      long out = (in[step] & ~kill[step]) | gen[step];
      for (int way = graph.firstWay(step); way < graph.firstWay(step + 1); way++) {
        int to = graph.to(way);
        if (to >= 0) {
          long joined = in[to] | over(way, out);
          changed |= joined != in[to];
          in[to] = joined;
        }
      }
    }
    return changed;
  }

  private long over(int way, long facts) {
    long kept = wayKill == null ? facts : facts & ~wayKill[way];
    return wayGen == null ? kept : kept | wayGen[way];
  }

  /** Whether a way or its step generates a fact. */
  private boolean begins(int way, long fact) {
    return (over(way, gen[graph.from(way)]) & fact) != 0;
  }

  private boolean passes(int way, long fact) {
    int before = graph.from(way);
    return (over(way, in[before] & ~kill[before]) & fact) != 0;
  }

  private int[] begun(int way, int[] toward, int step) {
    int[] first = graph.shortestTo(graph.from(way));
    int[] path = Arrays.copyOf(first, first.length + 1);
    path[first.length] = way;
    return along(path, graph.to(way), toward, step);
  }

  /** Extends a path by the ways that lead from its end to a step. */
  private int[] along(int[] path, int from, int[] toward, int step) {
    int length = path.length;
    for (int at = from; at != step; at = graph.to(toward[at])) {
      path = length == path.length ? Arrays.copyOf(path, 2 * length + 8) : path;
      path[length++] = toward[at];
    }
    return Arrays.copyOf(path, length);
  }
}
