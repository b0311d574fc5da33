package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.source.LimitSettings;
import rungbook.source.Problem;
import rungbook.tree.Tree;

/** A proof past a limit is not begun, and the report says which limit; each is a setting. */
class ProofLimitsTest {

  private static final Tree TREE = StarterLibrary.tree("no-cooling-blower-runs");

  private static Proving.Result prove(Map<String, String> settings) {
    Budget budget = Budget.of(new LimitSettings(name -> Optional.ofNullable(settings.get(name))));
    return new Prover(4, budget).prove(TREE, StarterLibrary.TEXT, id -> Optional.empty());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "positions | 3 | the fault `.+` may have blown a fuse in any of [0-9]+ positions of the controls "
          + "that it depends on, and at most 3 are tried",
      "faults | 7 | its system has [0-9]+ faults and pairs, and at most 7 are tried",
      "arrivals | 9 | its steps are reached in more than 9 states of the equipment together",
      "solutions | 70 | its tasks bring the equipment into more states than the 1 that can be solved"})
  void aProofPastALimitSaysWhich(String limit, String most, String why) {
    Problem problem = prove(Map.of("rungbook.limit." + limit, most)).problems().get(0);
    assertEquals("not-proved", problem.code().name());
    assertTrue(problem.facts().get("why").matches(why), problem.facts().get("why"));
  }

  @Test
  void withinTheLimitsItIsProved() {
    assertTrue(prove(Map.of()).proved().isPresent());
    assertEquals(Budget.USUAL, Budget.of(new LimitSettings(limit -> Optional.of("no number"))));
  }
}
