package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.circuit.Reading;
import rungbook.proof.report.LimitFix;
import rungbook.proof.report.Proof;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Readings written down by hand, and what must follow from them. */
class ProvingTest {

  private static final String ENDS = LampSteps.SOUND
      + LampSteps.finding("Weak", "fault: wire weak", "refer: a senior technician")
      + LampSteps.finding("Dead", "fault: lamp dead", "refer: a senior technician")
      + LampSteps.finding("Call", "refer: the office");
  private static final String ON = LampSteps.on("[Volts](#volts)");

  private static Tree limit(String number) {
    return MadeUp.tree("one", ON + LampSteps.reading("A, B", "attic", number + " to 30 V",
        number + " to 30: [Sound](#sound)", "5 to " + number + ": [Weak](#weak)", "under 5: [Dead](#dead)",
        "over 30: [Call](#call)") + ENDS);
  }

  private static MadeUp lamp() {
    return new MadeUp(
        Map.of("healthy VOLTS", new double[] {26, 24, 25, 23}, "lamp dead VOLTS", new double[] {0, 0, 1, 1},
            "wire weak VOLTS", new double[] {15, 17, 16, 18}));
  }

  private static List<String> codes(Proof proof) {
    return proof.problems().stream().map(problem -> problem.code().name()).toList();
  }

  @Test
  void everyCaseIsFoundWhereTheLimitsAreSound() {
    Proof proof = lamp().prove(limit("20"));
    assertEquals(1, proof.claimed().detected(), 1e-12);
    assertEquals(1, proof.claimed().isolatedTo(1), 1e-12);
    assertEquals(0, proof.falseAlarmShare());
    assertEquals(1, proof.outcomes().get(0).healthy(), 1e-12);
  }

  /** Two minutes at the lever, three of walking, one at the check; the finding takes none. */
  @Test
  void minutesCountTheWalk() {
    Proof proof = lamp().prove(limit("20"));
    assertEquals(6, proof.meanMinutes(), 1e-12);
    assertEquals(1, proof.meanChecks(), 1e-12);
  }

  /** ±(1 % + 3 digits): 18 V may show 18.5, 23 V may show 22.5 (22.47 rounded); 5 V is between 1.3 and 14.6. */
  @Test
  void limitMayBeAnywhereBetweenTheReadingsOfBothSides() {
    List<Proof.Limit> limits = lamp().prove(limit("20")).checks().get(0).limits();
    assertEquals(new BigDecimal("1.3"), limits.get(0).above().orElseThrow().shown());
    assertEquals(new BigDecimal("14.6"), limits.get(0).upTo().orElseThrow().shown());
    assertEquals(new BigDecimal("18.5"), limits.get(1).above().orElseThrow().shown());
    assertEquals("wire weak", limits.get(1).above().orElseThrow().fault());
    assertEquals(new BigDecimal("22.5"), limits.get(1).upTo().orElseThrow().shown());
    assertEquals("house 3", limits.get(1).upTo().orElseThrow().circumstances());
    assertTrue(limits.stream().allMatch(Proof.Limit::sound));
  }

  @Test
  void limitAmongTheHealthyReadingsRaisesFalseAlarmsAndNamesTheHouse() {
    Proof proof = lamp().prove(limit("24.5"));
    double share = (0 + shareUnder(24, 24.45) + shareUnder(25, 24.45)) / 3;
    assertEquals(share, proof.falseAlarmShare(), 1e-9);
    Problem problem = proof.problems().stream().filter(one -> one.code().name().equals("limit-unsound")).findFirst()
        .orElseThrow();
    assertEquals("house 1", problem.facts().get("circumstances"));
    assertEquals("20 V", problem.facts().get("better"));
    assertTrue(codes(proof).contains("healthy-condemned"));
  }

  private static double shareUnder(double value, double limit) {
    double a = 0.01 * value + 0.3;
    return Math.max(0, Math.min(1, (limit - value + a) / (2 * a)));
  }

  @Test
  void fixedLimitIsSound() {
    Tree bad = limit("24.5");
    Proof.Limit wrong = lamp().prove(bad).checks().get(0).limits().get(1);
    Fix fix = LimitFix.fix(wrong, (Step.MeterCheck) bad.steps().get(1), new BigDecimal("0.1")).orElseThrow();
    String text = Fix.apply(bad.source().text(), fix.edits());
    assertEquals(limit("20").source().text(), text);
    assertEquals(List.of(fix),
        lamp().prove(bad).problems().stream().filter(one -> one.code().name().equals("limit-unsound"))
            .flatMap(one -> one.fix().stream()).toList());
  }

  /** Good units read up to 121 V, a display up to 122.5 V; the bad wire reads 208 V. Nobody calls 150 V healthy. */
  @Test
  void theWindowOfAGoodUnitIsNotStretchedFarBeyondIt() {
    MadeUp mains = new MadeUp(Map.of("healthy VOLTS", new double[] {114, 120, 121, 118}, "lamp dead VOLTS",
        new double[4], "wire weak VOLTS", new double[] {208, 208, 208, 208}));
    Tree tree = MadeUp.tree("one", ON + LampSteps.reading("A, B", "attic", "110 to 120 V",
        "110 to 120: [Sound](#sound)", "over 120: [Weak](#weak)", "under 110: [Dead](#dead)") + ENDS);
    Problem problem = mains.prove(tree).problems().stream().filter(one -> one.code().name().equals("limit-unsound"))
        .findFirst().orElseThrow();
    assertEquals("125 V", problem.facts().get("better"));
    String text = Fix.apply(tree.source().text(), problem.fix().orElseThrow().edits());
    assertTrue(text.contains("expect: 110 to 125 V") && text.contains("- 110 to 125:"), text);
  }

  @Test
  void falseAlarmOfACornerAloneIsReportedAsTheWorst() {
    MadeUp cold = new MadeUp(Map.of("healthy VOLTS", new double[] {26, 26, 26, 15}, "lamp dead VOLTS", new double[4],
        "wire weak VOLTS", new double[] {15, 15, 15, 15}));
    Proof proof = cold.prove(limit("20"));
    Problem problem = proof.problems().stream().filter(one -> one.code().name().equals("healthy-condemned")).findFirst()
        .orElseThrow();
    assertEquals("the worst", problem.facts().get("share"));
    assertEquals("house 3", problem.facts().get("circumstances"));
    assertEquals(0, proof.falseAlarmShare());
  }

  @Test
  void readingsThatOverlapLeaveNoPlaceForALimit() {
    MadeUp both = new MadeUp(Map.of("healthy VOLTS", new double[] {26, 21, 25, 23}, "lamp dead VOLTS", new double[4],
        "wire weak VOLTS", new double[] {15, 22, 16, 18}));
    Proof.Limit limit = both.prove(limit("20")).checks().get(0).limits().get(1);
    assertFalse(limit.sound());
    assertFalse(limit.separable());
    assertEquals(Optional.empty(), limit.better());
  }

  @Test
  void witnessIsTheWayTaken() {
    Proof proof = lamp().prove(limit("24.5"));
    Problem problem = proof.problems().stream().filter(one -> one.code().name().equals("healthy-condemned")).findFirst()
        .orElseThrow();
    Witness.Path path = (Witness.Path) problem.witness().orElseThrow();
    assertEquals(List.of("On", "Volts", "Weak"), path.stops().stream().map(Witness.Stop::step).toList());
    assertEquals("5 to 24.5 (reads 24 V)", path.stops().get(1).answer());
  }

  @Test
  void unmodeledCheckTakesEveryAnswerThatReachesAFinding() {
    Proof proof = lamp().prove(MadeUp.tree("one", LampSteps.reading("X, B", "hall", "20 to 30 V",
        "20 to 30: [Sound](#sound)", "under 20: [Dead](#dead)", "over 30: [Call](#call)") + ENDS));
    assertEquals(List.of("Volts"), proof.unmodeled());
    assertEquals(0.5, proof.outcomes().get(1).found(), 1e-12);
    assertEquals(0.5, proof.outcomes().get(1).healthy(), 1e-12);
    assertEquals(0, proof.outcomes().get(1).referred());
  }

  /** The circuit knows no current of a flame; the author says what a healthy system reads. */
  @ParameterizedTest
  @ValueSource(strings = {"20 to 30 V", "over 20 V", "20 V or more"})
  void aHealthySystemReadsAsExpectedWhereTheCircuitKnowsNothing(String expect) {
    Proof proof = lamp().prove(MadeUp.tree("one", LampSteps.reading("X, B", "hall", expect,
        "20 or more: [Sound](#sound)", "under 20: [Dead](#dead)") + ENDS));
    assertEquals(List.of(), proof.falseAlarms());
    assertEquals(List.of("Volts"), proof.unmodeled());
    assertEquals(1, proof.outcomes().get(0).healthy(), 1e-12);
  }

  /** A sight that the system does not have: the answer that leads to faults only is one of a faulty system. */
  @Test
  void aHealthySystemGivesTheAnswerThatCanEndHealthy() {
    String smell = "## Volts\n\n```check\nsmell: smoke\nat: hall\n```\n\n- no: [Sound](#sound)\n- yes: "
        + "[Dead](#dead)\n";
    Proof proof = lamp().prove(MadeUp.tree("one", ON + smell + ENDS));
    assertEquals(List.of(), proof.falseAlarms());
    assertEquals(0.5, proof.outcomes().get(1).found(), 1e-12);
  }

  /** Without a finding of no fault, no answer is better than another, and the false alarm is the author's. */
  @Test
  void aTreeThatNeverEndsHealthyCondemnsTheHealthySystem() {
    String smell = "## Volts\n\n```check\nsmell: smoke\nat: hall\n```\n\n- no: [Weak](#weak)\n- yes: "
        + "[Dead](#dead)\n";
    assertEquals(1, lamp().prove(MadeUp.tree("one", ON + smell + ENDS)).falseAlarmShare(), 1e-12);
  }

  @Test
  void sightsAnswerYesAndNo() {
    String look = "## Look\n\n```check\nlook: glow\nat: hall\n```\n\n- yes: [Sound](#sound)\n- no: [Dead](#dead)\n";
    Proof proof = lamp()
        .prove(MadeUp.tree("one", ON.replace("Volts", "Look").replace("#volts", "#look") + look + ENDS));
    assertEquals(1, proof.outcomes().get(1).found(), 1e-12);
    assertEquals(1, proof.outcomes().get(2).healthy(), 1e-12);
  }

  @Test
  void readingWithoutAnAnswerStopsThere() {
    MadeUp chatter = new MadeUp(Map.of("wire weak VOLTS", new double[] {Reading.UNSTEADY, Reading.UNSTEADY, 24, 24}));
    Proof proof = chatter.prove(limit("20"));
    assertEquals(2.0 / 3, proof.outcomes().get(2).nothing(), 1e-12);
    assertTrue(codes(proof).contains("answer-lacking"));
  }

  @Test
  void strayVoltageIsToldFromALiveOne() {
    MadeUp stray = new MadeUp(Map.of("lamp dead VOLTS", new double[] {22, 22, 22, 22}, "lamp dead VOLTS_LOW_IMPEDANCE",
        new double[] {0.1, 0.1, 0.1, 0.1}));
    Problem problem = stray.prove(limit("20")).problems().stream()
        .filter(one -> one.code().name().equals("stray-reads-live")).findFirst().orElseThrow();
    assertEquals("22 V", problem.facts().get("reading"));
    assertEquals("0.1 V", problem.facts().get("low"));
  }

  @Test
  void stateThatNoTaskHasSetIsNotWhatTheWindowExpects() {
    Tree off = MadeUp.tree("one", LampSteps.volts("hall", "20 to 30: [Sound](#sound)", "under 20: [Dead](#dead)",
        "over 30: [Call](#call)") + ENDS);
    assertTrue(codes(lamp().prove(off)).contains("expectation-not-met"));
  }

  @Test
  void anotherTreeIsHandedTheFault() {
    Proof proof = lamp().prove(MadeUp.tree("one", ON + LampSteps.volts("hall", "20 to 30: [Sound](#sound)",
        "under 20: [other](other.md)", "over 30: [Call](#call)") + ENDS));
    assertEquals(1, proof.outcomes().get(1).handedOn(), 1e-12);
    assertTrue(codes(proof).contains("fault-never-found"));
  }

  @Test
  void circleIsNotProvedAndSaysSo() {
    Tree circle = MadeUp.tree("one",
        ON + LampSteps.volts("hall", "20 to 30: [On](#on)", "anything else: [Sound](#sound)") + ENDS);
    List<Problem> problems = lamp().result(circle).problems();
    assertEquals(List.of("not-proved"), problems.stream().map(problem -> problem.code().name()).toList());
  }

  @Test
  void sameInputGivesTheSameProof() {
    assertEquals(lamp().prove(limit("24.5")).endings(), lamp().prove(limit("24.5")).endings());
    assertEquals(lamp().prove(limit("24.5")).outcomes(), lamp().prove(limit("24.5")).outcomes());
  }
}
