package rungbook.rules.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.rules.api.RuleContext;
import rungbook.source.Span;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** What may and what must be so at a step is what people find there who follow every path, one after the other. */
class PathFactsTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithFollowingEveryPath(long seed) {
    Tree tree = RandomTrees.tree(seed, false);
    List<List<World>> arrivals = new ArrayList<>();
    tree.steps().forEach(step -> arrivals.add(new ArrayList<>()));
    follow(tree, 0, World.before(tree), arrivals);

    PathFacts state = RuleContext.of(tree).state();
    PathFacts.ProgramPoint point = state.point();
    for (int step : state.order()) {
      point.enter(step);
      new Compared(state, point, arrivals.get(step)).everything();
    }
  }

  private static void follow(Tree tree, int at, World world, List<List<World>> arrivals) {
    arrivals.get(at).add(world);
    Step step = tree.steps().get(at);
    for (Way way : step.ways()) {
      if (way.target() instanceof Target.ToStep to) {
        World next = world.copy();
        next.pass(step, way.written());
        follow(tree, to.step(), next, arrivals);
      }
    }
  }

  private record Compared(PathFacts state, PathFacts.ProgramPoint point, List<World> worlds) {

    void everything() {
      compare(Fact.PROVED_ANYWHERE, world -> world.provedDead);
      compare(Fact.POWER_OFF, world -> world.poweredOff);
      compareRepairs();
      for (String name : List.of("breaker", "disconnect")) {
        compare(Fact.ISOLATED, name, world -> world.isolated.contains(name));
        compare(Fact.TRIED, name, world -> !world.untried.contains(name));
        compare(Fact.OFF_UNTAGGED, name, world -> world.isolated.contains(name) && !world.tagged.contains(name));
      }
      for (String name : List.of("door switch", "limit")) {
        compare(Fact.BYPASSED, name, world -> world.bypassed.contains(name));
      }
      for (String name : List.of("igniter", "run capacitor", "control fuse")) {
        compare(Fact.DISCONNECTED, name, world -> world.disconnected.contains(name));
        compare(Fact.DISCHARGED, name, world -> world.discharged.contains(name));
      }
      compare(Fact.OPEN, "door", world -> world.open.contains("door"));
      for (String position : List.of("cooling", "heating", "off")) {
        compare(state.facts().at(new Setting("thermostat", position, Span.at(0))),
            world -> position.equals(world.positions.get("thermostat")));
      }
    }

    private void compareRepairs() {
      compare(Fact.FOUND, world -> !world.findings.isEmpty());
      for (int step = 0; step < 9; step++) {
        String id = "s" + step;
        compare(Fact.FOUND_AT, id, world -> world.findings.contains(id));
      }
      if (state.facts().repairs().any()) {
        compare(Fact.REPAIRED, world -> world.repaired);
        compare(Fact.UNCHECKED, world -> world.unchecked);
      }
    }

    private void compare(Fact kind, Predicate<World> so) {
      compare(state.facts().of(kind), so);
    }

    private void compare(Fact kind, String name, Predicate<World> so) {
      compare(state.facts().of(kind, name), so);
    }

    private void compare(int fact, Predicate<World> so) {
      if (fact != FactTable.NONE) {
        assertEquals(worlds.stream().anyMatch(so), point.may(fact), () -> "may " + state.facts().words(fact));
        assertEquals(worlds.stream().allMatch(so), point.must(fact), () -> "must " + state.facts().words(fact));
      }
    }
  }
}
