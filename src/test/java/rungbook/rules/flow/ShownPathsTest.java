package rungbook.rules.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.rules.Registry;
import rungbook.source.Problem;
import rungbook.source.Span;
import rungbook.source.Witness.Stop;
import rungbook.source.Witness;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Every path that a problem shows can be walked in the tree, and whoever walks it meets the problem. */
class ShownPathsTest {

  private static final Set<
      String> REPLAYED = Set.of("left-bypassed", "left-off", "left-disconnected", "call-not-made", "measured-live",
          "measured-charged", "touched-live", "not-proved-dead", "capacitor-charged", "proved-before-isolating");

  private final Set<String> met = new HashSet<>();

  @Test
  void leadToTheProblem() {
    for (long seed = 0; seed < 1500; seed++) {
      Tree tree = RandomTrees.tree(seed, seed % 4 == 0);
      for (Problem problem : Registry.inspect(tree)) {
        if (problem.witness().isPresent() && problem.witness().get() instanceof Witness.Path path
            && !problem.code().name().equals("path-circle")) {
          walk(tree, path, problem);
        }
      }
    }
    assertTrue(met.containsAll(REPLAYED), () -> "met " + met);
    assertTrue(
        met.containsAll(
            Set.of("check-settled", "answer-ruled-out", "check-repeated", "live-after-isolating", "fuse-again")),
        () -> "met " + met);
  }

  private void walk(Tree tree, Witness.Path path, Problem problem) {
    World world = World.before(tree);
    List<Stop> stops = path.stops();
    List<Step> walked = new ArrayList<>();
    int at = 0;
    for (int i = 0; i < stops.size() - 1; i++) {
      Step step = tree.steps().get(at);
      Stop stop = stops.get(i);
      assertEquals(step.title(), stop.step());
      String next = stops.get(i + 1).step();
      Way taken = step.ways().stream().filter(way -> way.written().equals(stop.answer()) && leadsTo(way, next, tree))
          .findFirst().orElseThrow();
      world.pass(step, stop.answer());
      walked.add(step);
      at = ((Target.ToStep) taken.target()).step();
    }
    Step last = tree.steps().get(at);
    assertEquals(last.title(), stops.get(stops.size() - 1).step());
    assertTrue(holds(last.header().section().span(), problem.span()), "the path ends where the problem is");
    assertMet(problem, last, world, walked);
    met.add(problem.code().name());
  }

  private static void assertMet(Problem problem, Step last, World world, List<Step> walked) {
    if (problem.code().name().startsWith("left-")) {
      last.actions().forEach(world::act);
    } else {
      for (Action action : last.actions()) {
        if (action.thing().span().equals(problem.span())) {
          break;
        }
        world.act(action);
      }
    }
    assertTrue(isSo(problem, last, world, walked),
        () -> problem.code() + " at " + problem.source() + ":" + problem.place());
  }

  private static boolean isSo(Problem problem, Step last, World world, List<Step> walked) {
    String thing = problem.source().text(problem.span());
    return switch (problem.code().name()) {
      case "left-bypassed" -> !world.bypassed.isEmpty();
      case "left-disconnected" -> !world.disconnected.isEmpty();
      case "left-off" -> world.isolated.stream().anyMatch(source -> !world.tagged.contains(source));
      case "call-not-made" -> !thing.equals("thermostat " + world.positions.get("thermostat"));
      case "measured-live", "touched-live", "proved-before-isolating" -> !world.poweredOff;
      case "measured-charged" -> world.discharged.isEmpty();
      case "not-proved-dead" -> !world.provedDead;
      case "capacitor-charged" -> !world.discharged.contains(thing);
      case "live-after-isolating" -> world.isolated.contains(problem.facts().get("source"));
      case "check-settled", "answer-ruled-out", "check-repeated" ->
          walked.stream().anyMatch(step -> step.title().equals(problem.facts().get("earlier")));
      default -> true;
    };
  }

  private static boolean leadsTo(Way way, String title, Tree tree) {
    return way.target() instanceof Target.ToStep to && tree.steps().get(to.step()).title().equals(title);
  }

  private static boolean holds(Span outer, Span inner) {
    return outer.start() <= inner.start() && inner.end() <= outer.end();
  }
}
