package rungbook.rules.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.rules.api.RuleContext;

/** The joined answer for all paths is the union of the answers of each path, followed by itself. */
class DataflowSolverTest {

  private record Problem(FlowGraph graph, long start, long[] gen, long[] kill, long[] wayGen, long[] wayKill) {

    static Problem of(long seed, boolean circles) {
      Random random = new Random(seed);
      FlowGraph graph = RuleContext.of(RandomTrees.tree(seed, circles)).state().graph();
      return new Problem(graph, random.nextLong(), sparse(random, graph.size()), sparse(random, graph.size()),
          sparse(random, graph.ways()),
          sparse(random, graph.ways()));
    }

    DataflowSolver solve() {
      return DataflowSolver.solve(graph, start, gen, kill, wayGen, wayKill);
    }

    long over(int way, long facts) {
      int step = graph.from(way);
      return (facts & ~kill[step] | gen[step]) & ~wayKill[way] | wayGen[way];
    }

    private static long[] sparse(Random random, int size) {
      return random.longs(size).map(bits -> bits & random.nextLong() & random.nextLong()).toArray();
    }
  }

  private record Visit(int step, long facts) {}

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void equalsTheUnionOverEveryPath(long seed) {
    Problem problem = Problem.of(seed, false);
    long[] union = new long[problem.graph().size()];
    followEveryPath(problem, 0, problem.start(), union);
    assertUnion(problem, union);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void equalsTheUnionOverEveryPathRoundCircles(long seed) {
    Problem problem = Problem.of(seed, true);
    long[] union = new long[problem.graph().size()];
    followOnce(problem, new Visit(0, problem.start()), new HashSet<>(), union);
    assertUnion(problem, union);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void pathShownForAFactIsOneAfterWhichItHolds(long seed) {
    Problem problem = Problem.of(seed, seed % 2 == 0);
    DataflowSolver flow = problem.solve();
    for (int step : problem.graph().order()) {
      for (long left = flow.at(step); left != 0; left &= left - 1) {
        assertHoldsAfter(problem, flow.pathTo(step, Long.lowestOneBit(left)), step, Long.lowestOneBit(left));
      }
    }
  }

  private static void assertHoldsAfter(Problem problem, int[] path, int step, long fact) {
    int at = 0;
    long facts = problem.start();
    for (int way : path) {
      assertEquals(at, problem.graph().from(way));
      facts = problem.over(way, facts);
      at = problem.graph().to(way);
    }
    assertEquals(step, at);
    assertTrue((facts & fact) != 0);
  }

  private static void assertUnion(Problem problem, long[] union) {
    DataflowSolver flow = problem.solve();
    for (int step : problem.graph().order()) {
      assertEquals(union[step], flow.at(step), "step " + step);
    }
  }

  private static void followEveryPath(Problem problem, int step, long facts, long[] union) {
    union[step] |= facts;
    FlowGraph graph = problem.graph();
    for (int way = graph.firstWay(step); way < graph.firstWay(step + 1); way++) {
      if (graph.to(way) >= 0) {
        followEveryPath(problem, graph.to(way), problem.over(way, facts), union);
      }
    }
  }

  /** Circles make endless paths, but only so many different visits. */
  private static void followOnce(Problem problem, Visit visit, Set<Visit> seen, long[] union) {
    if (seen.add(visit)) {
      union[visit.step()] |= visit.facts();
      FlowGraph graph = problem.graph();
      for (int way = graph.firstWay(visit.step()); way < graph.firstWay(visit.step() + 1); way++) {
        if (graph.to(way) >= 0) {
          followOnce(problem, new Visit(graph.to(way), problem.over(way, visit.facts())), seen, union);
        }
      }
    }
  }
}
