package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.tree.Tree;

/** A voltage is stray where the low-impedance mode takes away more than half of them (common practice, no source). */
class StrayRatioTest {

  private static final Tree TREE = MadeUp.tree("stray", LampSteps.onAndVolts("attic", "20 to 30: [Sound](#sound)",
      "under 20: [Dead](#dead)", "over 30: [Call](#call)") + LampSteps.SOUND
      + LampSteps.finding("Dead", "fault: lamp dead, wire weak", "refer: a senior technician")
      + LampSteps.finding("Call", "refer: the office"));

  @ParameterizedTest
  @CsvSource({"10.9, 1", "11.1, 0"})
  void halfIsTheLimit(double low, int reports) {
    MadeUp lamp = new MadeUp(Map.of("lamp dead VOLTS", new double[] {22, 22, 22, 22}, "lamp dead VOLTS_LOW_IMPEDANCE",
        new double[] {low, low, low, low}));
    assertEquals(reports, lamp.prove(TREE).problems().stream()
        .filter(problem -> problem.code().name().equals("stray-reads-live")).count());
  }
}
