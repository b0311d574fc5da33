package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;

/**
 * Readings written down by hand, and what must follow for the repair. Three installations are drawn; with a weak wire
 * they read 10, 15 and 25 V, so two of the three come to the finding. A dead lamp reads nothing.
 */
class RepairProofTest {

  private static final Map<String, double[]> READINGS = Map.of("wire weak VOLTS", new double[] {10, 15, 25, 10},
      "lamp dead VOLTS", new double[] {0, 0, 0, 0});

  private static String tree(String faults, String replaced, String limit) {
    return "## On\n\n```task\nset: lever on\nat: hall\n```\n\n- done: [Volts](#volts)\n\n"
        + "## Volts\n\n```check\nmeasure: AC volts\nleads: A, B\nat: hall\nexpect: 20 to 30 V\n```\n\n"
        + "- 20 to 30: [Sound](#sound)\n- under 20: [Wire](#wire)\n- over 30: [Sound](#sound)\n\n"
        + "## Sound\n\n```finding\nhealthy: yes\n```\n\n"
        + "## Wire\n\n```finding\nfault: " + faults + "\n```\n\n- repair: [New wire](#new-wire)\n\n"
        + "## New wire\n\n```task\nreplace: " + replaced + "\nat: hall\n```\n\n- done: [Volts again](#volts-again)\n\n"
        + "## Volts again\n\n```check\nmeasure: AC volts\nleads: A, B\nat: hall\nexpect: 20 to 30 V\n```\n\n- "
        + limit + " or more: [Proved](#proved)\n- under " + limit + ": [Second fault](#second-fault)\n\n"
        + "## Proved\n\n```end\nresult: repaired and proved\n```\n\n"
        + "## Second fault\n\n```end\nresult: referred\nrefer: the office\n```\n";
  }

  private static Proof prove(String steps) {
    return new MadeUp(READINGS).prove(MadeUp.tree("one", steps));
  }

  private static Proof.Repair repair(String steps) {
    List<Proof.Repair> repairs = prove(steps).repairs();
    assertEquals(1, repairs.size());
    return repairs.get(0);
  }

  @Test
  void aRightRepairReadsAsTheHealthySystemAndAWrongOneAsBefore() {
    Proof.Repair repair = repair(tree("wire weak", "wire", "20"));
    assertEquals("Wire", repair.title());
    assertEquals(2.0 / 3, repair.faults().get(0).repaired(), 1e-9);
    assertEquals(1, repair.passed(), 1e-9);
    assertEquals(1, repair.noticed(), 1e-9);
  }

  @Test
  void aWrongRepairThatReadsOverTheLimitIsNotNoticed() {
    Proof proof = prove(tree("wire weak", "wire", "12"));
    assertEquals(1.0 / 2, proof.repairs().get(0).noticed(), 1e-9, "15 V passes, 10 V does not");
    Problem problem = one(proof, "wrong-repair-unnoticed");
    assertEquals("wire weak (50 %)", problem.facts().get("faults"));
    assertTrue(problem.witness().isPresent());
  }

  @Test
  void aRightRepairThatItsCheckTurnsAwayDoesNotPass() {
    Proof proof = prove(tree("wire weak", "wire", "25"));
    assertEquals(0, proof.repairs().get(0).passed(), 1e-9, "a healthy system reads 24 V");
    assertEquals("wire weak (100 %, at Second fault)", one(proof, "repair-not-passing").facts().get("faults"));
  }

  @Test
  void aFaultThatTheRepairLeavesDoesNotPass() {
    Proof.Repair repair = repair(tree("wire weak, lamp dead", "wire", "20"));
    // by likelihood: 2 times two thirds of the weak wires pass, of these and the 1 dead lamp
    assertEquals(4.0 / 7, repair.passed(), 1e-9);
    assertEquals(List.of(0.0, 1.0), repair.faults().stream().map(Proof.RepairedFault::passed).toList());
  }

  @Test
  void aFaultLeftInPlaceDoesNotPassEvenWhereItEndsAsProved() {
    Proof.Repair repair = repair(tree("wire weak", "lamp", "5"));
    assertEquals(0, repair.passed(), 1e-9);
    assertEquals(0, repair.noticed(), 1e-9);
  }

  @Test
  void theMeasuresOfTheDiagnosisDoNotCountTheRepair() {
    Proof goesOn = prove(tree("wire weak", "wire", "20"));
    String ended = tree("wire weak", "wire", "20").replace("- repair: [New wire](#new-wire)\n\n", "");
    Proof ends = prove(ended.substring(0, ended.indexOf("## New wire")));
    assertEquals(ends.claimed().detected(), goesOn.claimed().detected());
    assertEquals(ends.claimed().meanGroup(), goesOn.claimed().meanGroup());
    assertEquals(ends.outcomes(), goesOn.outcomes());
    assertEquals(ends.endings(), goesOn.endings());
    assertEquals(ends.meanMinutes(), goesOn.meanMinutes());
    assertEquals(List.of(), ends.repairs());
  }

  @Test
  void aCheckThatTheCircuitDoesNotModelSaysNothing() {
    String lines = "leads: A, B\nat: hall\nexpect: 20 to 30 V\n```\n\n- 20 or";
    Proof proof = prove(tree("wire weak", "wire", "20").replace(lines, lines.replace("A, B", "X, B")));
    assertEquals(List.of("Volts again"), proof.repairs().get(0).unmodeled());
    assertEquals(List.of(), proof.problems().stream().map(problem -> problem.code().name())
        .filter(code -> code.contains("repair")).toList());
  }

  @Test
  void aPathWithoutARepairIsNoRepair() {
    String steps = tree("wire weak", "wire", "20").replace("- repair: [New wire](#new-wire)",
        "- no part: [Second fault](#second-fault)\n- repair: [New wire](#new-wire)");
    assertEquals(List.of(), prove(steps).repairs());
  }

  private static Problem one(Proof proof, String code) {
    List<Problem> found = proof.problems().stream().filter(problem -> problem.code().name().equals(code)).toList();
    assertEquals(1, found.size(), code);
    return found.get(0);
  }
}
