package rungbook.library.solving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.library.Example;
import rungbook.library.Library;
import rungbook.library.StarterLibrary;
import rungbook.library.StarterProofs;
import rungbook.proof.Suspects;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.MixedInstallations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.proof.propagation.CaseFlow;
import rungbook.proof.propagation.Propagation;
import rungbook.tree.Step;
import rungbook.tree.Tree;

class SuspectsTest {

  private static final PreparedSystems DRAWN = new PreparedSystems(new PreparedSystem.Making(
      system -> MixedInstallations.of(system, StarterProofs.FEW), Budget.inForce(), source -> Optional.empty()));

  /** A lamp behind a fuse and a cable, found with two readings. */
  private static final Library LAMP = Example.library("""
      `shared/systems/lamp.md`

      ~~~~markdown
      ---
      title: Lamp
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      A: at bench, 120 V
      B: at bench, 120 V
      N: at bench
      ```

      ```parts
      supply: supply, 120 V, 0.1 ohm, L1 to N
      fuse: fuse, 3 A, L1 to A
      feed: wire, 0.1 ohm, A to B
      lamp: load, 120 V, 60 W, B to N
      ```

      ```faults
      fuse open: open fuse, likelihood 3
      feed open: open feed, likelihood 1
      feed corroded: raise feed by 10 to 1000 ohm, likelihood 2
      lamp open: open lamp, likelihood 4
      ```
      ~~~~

      `trees/dark.md`

      ~~~~markdown
      ---
      title: Dark
      complaint: The lamp is dark.
      system: lamp
      ---

      ## B to N

      ```check
      measure: AC volts low impedance
      leads: B, N
      at: bench
      expect: 100 to 130 V
      ```

      - 100 to 130: [Lamp](#lamp)
      - anything else: [A to N](#a-to-n)

      ## A to N

      ```check
      measure: AC volts low impedance
      leads: A, N
      at: bench
      expect: 100 to 130 V
      ```

      - 100 to 130: [Feed](#feed)
      - anything else: [Fuse](#fuse)

      ## Lamp

      ```finding
      fault: lamp open
      ```

      ## Feed

      ```finding
      fault: feed open
      ```

      ## Fuse

      ```finding
      fault: fuse open
      ```
      ~~~~
      """);

  private static Suspects ofLamp() {
    Tree tree = LAMP.tree("dark").orElseThrow().tree();
    return new FactsFinder().of(tree, LAMP.text()).suspects();
  }

  private static Set<String> names(Suspects suspects, BitSet cases) {
    return cases.stream().mapToObj(one -> String.join(" and ", suspects.cases().get(one).faults()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * By hand: an open lamp leaves 120 V at B, an open fuse or wire leaves none. The lamp has 240 ohm, so that 10 ohm
   * more in the wire leave 115 V at B, and 1000 ohm leave 23 V: what is corroded can give either answer. At A there is
   * 120 V, but for the open fuse. The healthy system has no faults, and an empty name.
   */
  @Test
  void aFaultIsWhereItsReadingsCanLead() {
    Suspects suspects = ofLamp();
    assertEquals(Set.of("", "feed corroded", "feed open", "fuse open", "lamp open"),
        names(suspects, suspects.arriving().get(0)));
    assertEquals(Set.of("", "feed corroded", "lamp open"), names(suspects, suspects.taking().get(0).get(0)));
    assertEquals(Set.of("feed corroded", "feed open", "fuse open"), names(suspects, suspects.taking().get(0).get(1)));
    assertEquals(Set.of("feed corroded", "feed open"), names(suspects, suspects.taking().get(1).get(0)));
    assertEquals(Set.of("fuse open"), names(suspects, suspects.taking().get(1).get(1)));
  }

  @Test
  void likelihoodsAreTheSystems() {
    assertEquals(List.of(0.0, 3.0, 1.0, 2.0, 4.0),
        ofLamp().cases().stream().map(Suspects.Case::likelihood).toList());
  }

  static List<String> starters() {
    return StarterProofs.ids();
  }

  /** Whatever a proof brings to a step or along a way, is said to be possible there. */
  @ParameterizedTest
  @MethodSource("starters")
  void noFaultOfAProofIsLeftOut(String id) {
    Tree tree = StarterLibrary.tree(id);
    PreparedSystem system = DRAWN.of(tree, StarterLibrary.TEXT).orElseThrow();
    Installations installations = system.circuit().installations().orElseThrow().without(tree.notForKeys());
    ProofContext context = ProofContext.of(installations, system.walkTimes(), tree.system().orElseThrow(),
        tree.meter(), other -> Optional.empty());
    int[] order = TopologicalOrder.of(tree.steps()).orElseThrow();
    StateEnumeration states = StateEnumeration.of(tree.steps(), order, context, Integer.MAX_VALUE, Integer.MAX_VALUE)
        .states().orElseThrow();
    CaseFlow flow = Propagation.run(tree, context.on(tree.symptoms(), states), states, order).flow();
    Suspects suspects = StarterLibrary.FACTS.of(tree, StarterLibrary.TEXT).suspects();
    List<List<String>> cases = suspects.cases().stream().map(Suspects.Case::faults).toList();
    var left = new TreeMap<String, String>();
    int passed = 0;
    for (int step = 0; step < tree.steps().size(); step++) {
      for (int way = 0; flow.reached(step) && way < tree.steps().get(step).ways().size(); way++) {
        for (int one = 1; one < installations.cases().size(); one++) {
          int known = cases.indexOf(installations.faults(one));
          boolean isTaken = flow.taken(step, way, one) > 0 && !(tree.steps().get(step) instanceof Step.Finding);
          passed += isTaken ? 1 : 0;
          if (isTaken && !suspects.taking().get(step).get(way).get(known)) {
            left.put(tree.steps().get(step).id() + " " + way + " " + installations.faults(one), "left out");
          }
        }
      }
    }
    assertEquals(new TreeMap<>(), left);
    assertTrue(passed > 20, passed + " ways of faults");
  }

  @Test
  void findingsLeaveFewFaults() {
    Tree tree = StarterLibrary.tree("no-cooling-blower-runs");
    Suspects suspects = StarterLibrary.FACTS.of(tree, StarterLibrary.TEXT).suspects();
    double mean = suspects.arriving().entrySet().stream()
        .filter(step -> tree.steps().get(step.getKey()) instanceof Step.Finding)
        .mapToInt(step -> step.getValue().cardinality()).average().orElseThrow();
    assertTrue(mean < 6, mean + " of " + suspects.arriving().get(0).cardinality());
    assertFalse(suspects.arriving().isEmpty());
  }
}
