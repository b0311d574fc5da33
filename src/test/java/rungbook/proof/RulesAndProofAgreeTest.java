package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.plan.Situation;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Span;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.StepHeader;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * The rules and the proof follow the same equipment. Every path of a random tree is followed twice, step by step: as
 * the proof does, and as the rules see a tree that has this path only. {@code -Dsteps=1000000} follows a million steps.
 */
class RulesAndProofAgreeTest {

  private static final long STEPS = Long.getLong("steps", 20_000);

  private long followed;
  private final Set<Fact> met = new HashSet<>();

  @Test
  void onEveryPathOfRandomTrees() {
    for (long seed = 0; followed < STEPS; seed++) {
      Tree tree = RandomWork.tree(seed);
      Found found = new Found(tree.steps().size());
      follow(tree, List.of(), 0, found);
      new Whole(tree, found).compare();
    }
    assertEquals(Set.of(Fact.ISOLATED, Fact.BYPASSED, Fact.OPEN, Fact.DISCONNECTED, Fact.AT), met);
  }

  private void follow(Tree tree, List<Integer> taken, int at, Found found) {
    Step step = tree.steps().get(at);
    boolean goesOn = false;
    for (int way = 0; way < step.ways().size(); way++) {
      if (step.ways().get(way).target() instanceof Target.ToStep to) {
        goesOn = true;
        List<Integer> further = new ArrayList<>(taken);
        further.add(way);
        follow(tree, further, to.step(), found);
      }
    }
    if (!goesOn) {
      compare(tree, taken, found);
    }
  }

  /** Follows one whole path. */
  private void compare(Tree tree, List<Integer> ways, Found found) {
    List<Integer> path = path(tree, ways);
    PathFacts rules = RuleContext.of(alone(tree, path, ways)).state();
    PathFacts.ProgramPoint point = rules.point();
    Situation proof = new Situation(CircuitState.start(RandomWork.WORDS), "hall");
    for (int i = 0; i < path.size(); i++) {
      Step step = tree.steps().get(path.get(i));
      proof = proof.to(step);
      point.enter(i);
      found.states.get(path.get(i)).add(proof.state());
      compare(proof.state(), rules, point, step);
      proof = proof.after(step);
      point.finish();
      compare(proof.state(), rules, point, step);
      followed++;
    }
  }

  private static List<Integer> path(Tree tree, List<Integer> ways) {
    List<Integer> path = new ArrayList<>(List.of(0));
    for (int way : ways) {
      Step step = tree.steps().get(path.get(path.size() - 1));
      path.add(((Target.ToStep) step.ways().get(way).target()).step());
    }
    return path;
  }

  /** A tree of one path, so that what may be so there is what is so. */
  private static Tree alone(Tree tree, List<Integer> path, List<Integer> ways) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < path.size(); i++) {
      Step step = tree.steps().get(path.get(i));
      steps.add(with(step, i < ways.size() ? List.of(to(i + 1, step.ways().get(ways.get(i)))) : List.of()));
    }
    return new Tree(tree.id(), tree.title(), tree.complaint(), tree.symptoms(), tree.document(), tree.system(),
        tree.circuits(), tree.notFor(), tree.remedies(), tree.hazards(), tree.cautions(), tree.meter(), steps);
  }

  private static Way to(int step, Way way) {
    return new Way(way.answer(), way.written(), way.answerSpan(), new Target.ToStep(step), way.label(), way.span());
  }

  private static Step with(Step step, List<Way> ways) {
    StepHeader old = step.header();
    var header = new StepHeader(old.id(), old.document(), old.section(), old.block(), old.at(), old.minutes(),
        old.timer(),
        old.cautions(), old.who(), ways);
    if (step instanceof Step.Task task) {
      return new Step.Task(header, task.actions());
    }
    return step instanceof Step.SenseCheck check
        ? new Step.SenseCheck(header, check.sense(), check.things(), check.presumed()) : step;
  }

  private void compare(CircuitState proof, PathFacts rules, PathFacts.ProgramPoint point, Step step) {
    compare(Fact.ISOLATED, proof.off(), rules, point, step);
    compare(Fact.BYPASSED, proof.bypassed(), rules, point, step);
    compare(Fact.OPEN, proof.open(), rules, point, step);
    compare(Fact.DISCONNECTED, proof.disconnected(), rules, point, step);
    for (String setting : RandomWork.SETTINGS) {
      comparePosition(setting.split(" "), proof, rules, point);
    }
  }

  /** The rules follow the positions that some check of the tree presumes. */
  private void comparePosition(String[] setting, CircuitState proof, PathFacts rules, PathFacts.ProgramPoint point) {
    int fact = rules.facts().at(new Setting(setting[0], setting[1], Span.at(0)));
    if (fact != FactTable.NONE) {
      boolean there = proof.positions().get(setting[0]).equals(setting[1]);
      assertEquals(there, point.may(fact), String.join(" ", setting));
      assertEquals(there, point.must(fact), String.join(" ", setting));
      met.add(Fact.AT);
    }
  }

  private void compare(Fact kind, Set<String> proof, PathFacts rules, PathFacts.ProgramPoint point, Step step) {
    assertEquals(proof, names(kind, rules, point, step), () -> kind + " at " + step.source() + " " + step.title());
  }

  /** What the rules say holds; on the only path, what may hold has to hold. */
  private Set<String> names(Fact kind, PathFacts rules, PathFacts.ProgramPoint point, Step step) {
    Set<String> names = new HashSet<>();
    for (int fact = point.nextMay(kind, 0); fact != FactTable.NONE; fact = point.nextMay(kind, fact + 1)) {
      assertTrue(point.must(fact), step.title());
      names.add(rules.facts().words(fact));
      met.add(kind);
    }
    return names;
  }

  /** By step, the states in which the proof came there. */
  private static final class Found {
    final List<Set<CircuitState>> states = new ArrayList<>();

    Found(int steps) {
      for (int step = 0; step < steps; step++) {
        states.add(new HashSet<>());
      }
    }
  }

  /** What may and what must be so at each step of the whole tree, all paths at once. */
  private record Whole(Tree tree, Found found) {

    void compare() {
      PathFacts rules = RuleContext.of(tree).state();
      PathFacts.ProgramPoint point = rules.point();
      for (int step : rules.order()) {
        point.enter(step);
        for (CircuitState state : found.states.get(step)) {
          all(state).forEach(
              (kind, names) -> names.forEach(name -> assertTrue(point.may(rules.facts().of(kind, name)), name)));
        }
        for (Fact kind : List.of(Fact.ISOLATED, Fact.BYPASSED, Fact.OPEN, Fact.DISCONNECTED)) {
          compare(kind, found.states.get(step), rules, point);
        }
      }
    }

    private static void compare(Fact kind, Set<CircuitState> states, PathFacts rules, PathFacts.ProgramPoint point) {
      for (int fact = point.nextMay(kind, 0); fact != FactTable.NONE; fact = point.nextMay(kind, fact + 1)) {
        String name = rules.facts().words(fact);
        long holding = states.stream().filter(state -> all(state).get(kind).contains(name)).count();
        assertTrue(holding > 0, () -> kind + " " + name + " holds on no path");
        assertEquals(holding == states.size(), point.must(fact), () -> kind + " " + name);
      }
    }

    private static Map<Fact, Set<String>> all(CircuitState state) {
      return Map.of(Fact.ISOLATED, state.off(), Fact.BYPASSED, state.bypassed(), Fact.OPEN, state.open(),
          Fact.DISCONNECTED, state.disconnected());
    }
  }
}
