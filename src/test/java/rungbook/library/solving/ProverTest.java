package rungbook.library.solving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.library.Example;
import rungbook.library.StarterLibrary;
import rungbook.library.WholeWay.Done;
import rungbook.library.WholeWay;
import rungbook.proof.Proving;
import rungbook.tree.Tree;

/** A proof says what it shows or why it shows nothing. */
class ProverTest {

  private static final String SYSTEM = "shared/systems/split-cooling-gas-furnace.md";
  private static final String TREE = "trees/no-cooling-blower-runs.md";

  /** Leads that float show nothing, and no case belongs above: any limit above zero works. */
  @Test
  void leadsThatFloatLeaveALimitItsPlace() {
    String text = StarterLibrary.TEXT.texts().get(TREE).text();
    for (String leads : List.of("Y, T1", "T1, C", "compressor S, C")) {
      String slip = text.replaceFirst("(## Y to C at the outdoor unit\\n(?s:.*?)leads: )Y, C\\n", "$1" + leads + "\n");
      assertNotEquals(text, slip);
      Done done = WholeWay.of(TREE, slip).proved().go();
      assertEquals(1, done.proofs(), leads);
      assertEquals(List.of(), done.unfit(), leads);
    }
  }

  /** One tree's failure is its own problem. */
  @Test
  void whatBreaksInATreeIsThatTreesProblem() {
    Tree tree = StarterLibrary.tree("no-cooling-blower-runs");
    Proving.Result result = Example.PROVER.prove(tree, StarterLibrary.TEXT, id -> {
      throw new IllegalStateException("broken");
    });
    assertEquals(List.of("proof-failed"), result.problems().stream().map(problem -> problem.code().name()).toList());
    assertTrue(result.problems().get(0).facts().get("why").startsWith("IllegalStateException"),
        result.problems().toString());
  }

  /** A warning about Class 2 is advice; an error leaves no circuit. */
  @ParameterizedTest
  @CsvSource({"150 VA, 1", "40 to 50 VA, 0"})
  void onlyAnErrorOfTheSystemStopsAProof(String rating, int proofs) {
    String text = StarterLibrary.TEXT.texts().get(SYSTEM).text();
    String changed = text.replace("24 V secondary, 40 VA,", "24 V secondary, " + rating + ",");
    assertNotEquals(text, changed);
    assertEquals(proofs, WholeWay.of(SYSTEM, changed).proved().go().proofs());
  }
}
