package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Journey.Fate;
import rungbook.proof.report.OnwardShares;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.tree.Tree;

/** Two trees, {@code one} and {@code other}, that hand over to each other; worked out by hand. */
class HandOverTest {

  private static final MadeUp LAMP = new MadeUp(Map.of("lamp dead VOLTS", new double[4], "wire weak VOLTS",
      new double[] {15, 16, 17, 18}));

  private static final String ENDS = LampSteps.SOUND + LampSteps.finding("Weak", "fault: wire weak")
      + LampSteps.finding("Dead", "fault: lamp dead");

  private static String volts(String low) {
    return LampSteps.volts("attic", "20 to 30: [Sound](#sound)", "5 to 20: [Weak](#weak)", "under 5: " + low,
        "over 30: [Sound](#sound)");
  }

  private static final String OTHER = "[other](other.md)";
  private static final Tree ONE = MadeUp.tree("one",
      LampSteps.on("[Glow](#glow)") + LampSteps.glow("[Sound](#sound)", OTHER) + ENDS);

  private static Tree other(String steps) {
    return MadeUp.tree("other", steps + ENDS);
  }

  private static Journey journey(Proof proof, String fault) {
    return proof.journeys().stream().filter(one -> one.fault().equals(fault)).findFirst().orElseThrow();
  }

  /** The lever is still on where the other tree begins: off, it would read 0 V of the weak wire too. */
  @Test
  void otherTreeGoesOnWithTheEquipmentAsItIsLeft() {
    MadeUp dark = new MadeUp(Map.of("lamp dead VOLTS", new double[4], "wire weak VOLTS",
        new double[] {15, 16, 17, 18}, "wire weak glow", new double[4]));
    Proof proof = dark.prove(ONE, other(volts("[Dead](#dead)")));
    for (String fault : List.of("lamp dead", "wire weak")) {
      assertEquals(1, journey(proof, fault).share(Fate.FOUND), 1e-12, fault);
      assertEquals("other", journey(proof, fault).places().get(0).tree());
    }
    assertEquals("found 100 %", OnwardShares.words(proof, "other"));
  }

  /** Two minutes at the lever, one at the glow; three of walking to the attic, one there. */
  @Test
  void timeAndChecksOfAllTreesAddUp() {
    Proof proof = LAMP.prove(ONE, other(volts("[Dead](#dead)")));
    assertEquals(2, journey(proof, "lamp dead").checks(), 1e-12);
    assertEquals(7, journey(proof, "lamp dead").minutes(), 1e-12);
    assertEquals(3, journey(proof, "wire weak").minutes(), 1e-12, "it ends in the first tree");
    assertEquals(3, proof.outcomes().get(1).minutes(), 1e-12, "the tree's own measures are its own");
  }

  @Test
  void everyJourneyEndsSomewhere() {
    for (Journey journey : LAMP.prove(ONE, other(volts("[Dead](#dead)"))).journeys()) {
      assertEquals(1, journey.places().stream().mapToDouble(Journey.Place::share).sum(), 1e-12, journey.fault());
    }
  }

  @Test
  void circleIsAnEndWithThePathThroughBothTrees() {
    Proof proof = LAMP.prove(ONE, other(volts("[one](one.md)")));
    Journey.Place end = journey(proof, "lamp dead").places().get(0);
    assertEquals(new Journey.Place(Fate.IN_A_CIRCLE, "other", "one", "one -> other -> one", 1), end);
    Problem problem = proof.problems().stream().filter(one -> one.code().name().equals("handed-in-circle")).findFirst()
        .orElseThrow();
    assertEquals("lamp dead (100 %)", problem.facts().get("faults"));
    List<Witness.Stop> stops = ((Witness.Path) problem.witness().orElseThrow()).stops();
    assertEquals(List.of("On done", "Glow no", "Volts under 5 (reads 0 V)"),
        stops.stream().map(stop -> stop.step() + " " + stop.answer()).toList());
    assertEquals(List.of("trees/one.md", "trees/one.md", "trees/other.md"),
        stops.stream().map(stop -> stop.source().name()).toList());
  }

  /** The other tree hands back to a later step, and there it ends. */
  @Test
  void wayBackToAnotherStepIsNoCircle() {
    Tree one = MadeUp.tree("one", LampSteps.on("[Glow](#glow)") + LampSteps.glow("[Look again](#look-again)", OTHER)
        + "## Look again\n\n```check\nlook: glow\nat: hall\n```\n\n- yes: [Sound](#sound)\n- no: [Dead](#dead)\n"
        + ENDS);
    Proof proof = LAMP.prove(one, other(volts("[one](one.md#look-again)")));
    assertEquals(1, journey(proof, "lamp dead").share(Fate.FOUND), 1e-12);
    assertTrue(proof.problems().stream().noneMatch(problem -> problem.code().name().equals("handed-in-circle")));
  }

  @Test
  void treeThatIsNotThereIsNotFollowed() {
    Proof proof = LAMP.prove(ONE);
    assertEquals(1, journey(proof, "lamp dead").share(Fate.NOT_FOLLOWED), 1e-12);
    assertEquals("not followed 100 %", OnwardShares.words(proof, "other"));
  }
}
