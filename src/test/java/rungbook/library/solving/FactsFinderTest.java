package rungbook.library.solving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungbook.library.StarterLibrary.tree;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.library.Example;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.library.StarterLibrary;
import rungbook.proof.CircuitFacts;
import rungbook.proof.HighestVoltages;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.MixedInstallations;
import rungbook.tree.Step;
import rungbook.tree.Tree;

@Tag("slow")
class FactsFinderTest {

  private static final FactsFinder FINDER = StarterLibrary.FACTS;

  private static double volts(Tree tree, String check) {
    Step step = tree.steps().stream().filter(one -> one.id().equals(check)).findFirst().orElseThrow();
    return FINDER.of(tree, StarterLibrary.TEXT).voltages().at(tree.steps().indexOf(step)).orElseThrow();
  }

  /** The system's text: two legs of at most 126 V, and 24 V from 120 V with 10 to 14 % of regulation. */
  @Test
  void highestVoltageIsTheSupplysAtItsLeads() {
    assertEquals(252, volts(tree("outdoor-unit-silent-24-volts-present"), "line-side-of-the-disconnect"), 0.1);
    double secondary = volts(tree("nothing-runs-thermostat-blank"), "transformer-secondary");
    assertTrue(secondary > 24 * 1.05 && secondary <= 24 * 1.05 * 1.14, secondary + " V");
  }

  /** An open contact has the supply across it, though a closed one has nothing. */
  @Test
  void everyFaultCounts() {
    assertTrue(volts(tree("heat-pump-warm-air-in-cooling"), "r-to-o-at-the-thermostat") > 24);
  }

  /** The corners that are left out move the highest voltage by less than a tenth of a pack's margin. */
  @Test
  void fewInstallationsAreEnough() {
    Tree tree = tree("no-heat-inducer-runs");
    PreparedSystem every = new PreparedSystems(new PreparedSystem.Making(
        system -> MixedInstallations.of(system, 16), Budget.inForce(), source -> Optional.empty()))
        .of(tree, StarterLibrary.TEXT).orElseThrow();
    Map<Integer, Double> corners = HighestVoltages
        .of(tree, every.circuit().installations().orElseThrow(), every.walkTimes(), Budget.inForce()).byStep();
    Map<Integer, Double> few = FINDER.of(tree, StarterLibrary.TEXT).voltages().byStep();
    assertEquals(corners.keySet(), few.keySet());
    corners.forEach((step, volts) -> assertEquals(volts, few.get(step), volts / 100));
    assertTrue(corners.size() > 3, corners.toString());
  }

  @Test
  void onlyVoltsAreBounded() {
    Tree tree = tree("blower-does-not-answer-fan-call");
    Map<Integer, Double> bounded = FINDER.of(tree, StarterLibrary.TEXT).voltages().byStep();
    assertTrue(bounded.size() > 3, bounded.toString());
    bounded.keySet().forEach(step -> assertTrue(
        tree.steps().get(step) instanceof Step.MeterCheck check && check.quantity().isVolts()));
  }

  /**
   * Two legs of 120 V with lamps of 10 and 100 W (1,440 and 144 ohm), and a neutral with 100 ohm more: by Millman's
   * theorem the light lamp has 162.5 V. With half of these ohms it would have 147 V. Loads differ by 10 %.
   */
  @Test
  void faultWithARangeCountsAtItsEnd() {
    Library lamps = Example.library("""
        `shared/systems/lamps.md`

        ~~~~markdown
        ---
        title: Lamps
        ---

        ```locations
        bench: start
        ```

        ```points
        L1: at bench, 120 V
        L2: at bench, 120 V
        N: at bench
        M: at bench
        ```

        ```parts
        supply: supply, 120 V, 0.01 ohm, L1 to N, N to L2
        neutral: wire, 0.1 ohm, M to N
        light lamp: load, 120 V, 10 W, L1 to M
        heavy lamp: load, 120 V, 100 W, M to L2
        ```

        ```faults
        loose neutral: raise neutral by 0.1 to 100 ohm
        ```
        ~~~~

        `trees/bright.md`

        ~~~~markdown
        ---
        title: Bright
        complaint: One lamp is too bright.
        system: lamps
        ---

        ## L1 to M

        ```check
        measure: AC volts
        leads: L1, M
        at: bench
        expect: 110 to 130 V
        ```

        - 110 to 130: [Good](#good)
        - anything else: [Good](#good)

        ## Good

        ```finding
        healthy: yes
        ```
        ~~~~
        """);
    double volts = new FactsFinder().of(lamps.tree("bright").orElseThrow().tree(), lamps.text()).voltages().at(0)
        .orElseThrow();
    assertTrue(volts > 160 && volts < 168, volts + " V");
  }

  @Test
  void nothingIsKnownWithoutASystem() {
    LibraryText text = new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of());
    assertEquals(CircuitFacts.unknown(), FINDER.of(tree("no-cooling-blower-runs"), text));
  }
}
