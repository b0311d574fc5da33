package rungbook.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.Proof;
import rungbook.tree.Tree;

/**
 * Who counts on a complaint, worked out by hand. The dead lamp has a likelihood of 1 and the weak wire one of 2; three
 * installations are drawn, the fourth is a corner.
 */
class ComplaintTest {

  private static final String STEPS = LampSteps.onAndVolts("hall", "20 to 30: [Sound](#sound)",
      "5 to 20: [Weak](#weak)", "under 5: [Dead](#dead)", "over 30: [Sound](#sound)") + LampSteps.SOUND
      + LampSteps.finding("Weak", "fault: wire weak") + LampSteps.finding("Dead", "fault: lamp dead");

  /** The weak wire keeps the lamp dark in the first installation and in the corner. */
  private static final MadeUp LAMP = new MadeUp(Map.of("lamp dead VOLTS", new double[4], "wire weak VOLTS",
      new double[] {15, 16, 17, 18}, "wire weak glow", new double[] {0, 1, 1, 0}));

  private static final String DARK = "call: lever on\nnot seen: glow\n";

  private static Proof proof(String symptoms) {
    return LAMP.prove(tree(symptoms));
  }

  private static Tree tree(String symptoms) {
    return MadeUp.tree("one", symptoms, STEPS);
  }

  private static List<String> codes(Proof proof) {
    return proof.problems().stream().map(problem -> problem.code().name()).toList();
  }

  @Test
  void faultWeighsItsLikelihoodTimesTheShareThatShowsTheComplaint() {
    Proof proof = proof(DARK);
    assertEquals(List.of(0.0, 1.0, 2.0 / 3), proof.outcomes().stream().map(Proof.Outcome::likelihood).toList());
    assertEquals((1 + 2.0 / 3) / 3, proof.complaint().likelihood(), 1e-12);
    assertEquals(List.of(1.0, 1.0 / 3), proof.complaint().faults().stream().map(Complaint.Shown::share).toList());
  }

  /** Of 5/3 on this complaint, the dead lamp has 1. */
  @Test
  void sharesAreOddsOnThisComplaint() {
    Proof proof = proof(DARK);
    assertEquals(List.of(0.0, 0.4, 0.6), proof.endings().stream().map(Proof.Ending::likelihood)
        .map(share -> Math.round(share * 1e12) / 1e12).toList());
    Proof.WayFlow dead = proof.ways().stream().filter(way -> way.step() == 1 && way.way() == 2).findFirst()
        .orElseThrow();
    assertEquals(0.6, dead.likelihood(), 1e-12);
  }

  /** All of those that show the complaint are found, so the share is 1 although two of three show nothing. */
  @Test
  void shareOfAFaultIsOfTheInstallationsThatShowTheComplaint() {
    Proof proof = proof(DARK);
    assertTrue(proof.outcomes().stream().skip(1).allMatch(outcome -> Math.abs(outcome.found() - 1) < 1e-12));
    assertEquals(1, proof.claimed().detected(), 1e-12);
    assertEquals(2, proof.claimed().faults());
  }

  @Test
  void healthySystemIsFollowedThoughItDoesNotShowTheComplaint() {
    assertEquals(1, proof(DARK).outcomes().get(0).healthy(), 1e-12);
    assertEquals(0, proof(DARK).complaint().healthy());
  }

  @Test
  void withoutTheLinesEveryFaultCountsInFull() {
    Proof proof = proof("");
    assertTrue(proof.complaint().symptoms().isEmpty());
    assertEquals(1, proof.complaint().likelihood(), 1e-12);
    assertEquals(List.of(0.0, 1.0, 2.0), proof.outcomes().stream().map(Proof.Outcome::likelihood).toList());
  }

  /** The lever is off at first, and then nothing glows. */
  @Test
  void withoutACallEveryControlIsAtItsFirstPosition() {
    assertEquals(1, proof("not seen: glow\n").complaint().likelihood(), 1e-12);
  }

  @Test
  void oneOfSeveralPositionsIsEnough() {
    assertEquals(1, proof("call: lever off or on\nnot seen: glow\n").complaint().likelihood(), 1e-12);
    assertEquals(proof("call: lever on\nseen: glow\n").complaint().likelihood(),
        proof("call: lever off or on\nseen: glow\n").complaint().likelihood(), 1e-12);
  }

  @Test
  void notAllSeenIsTheOppositeOfAllSeen() {
    assertEquals(proof(DARK).complaint(),
        withSymptomsOf(proof(DARK), proof("call: lever on\nnot all seen: glow\n").complaint()));
  }

  private static Complaint withSymptomsOf(Proof proof, Complaint other) {
    return new Complaint(proof.complaint().symptoms(), other.likelihood(), other.healthy(), other.faults(),
        other.uncovered());
  }

  @Test
  void faultThatDoesNotGiveTheComplaintIsANoteAndNothingElse() {
    Proof proof = proof("call: lever on\nseen: glow\n");
    assertEquals(List.of("healthy", "wire weak"), proof.outcomes().stream().map(Proof.Outcome::name).toList());
    assertTrue(codes(proof).contains("fault-not-in-complaint"));
    assertTrue(codes(proof).contains("complaint-of-healthy"));
    assertTrue(codes(proof).stream().noneMatch(code -> code.equals("fault-never-found")), () -> "" + codes(proof));
    assertEquals(1, proof.claimed().faults());
  }

  @Test
  void complaintThatNoFaultGivesIsTheOnlyProblem() {
    MadeUp bright = new MadeUp(Map.of("lamp dead glow", new double[] {1, 1, 1, 1}));
    assertEquals(List.of("complaint-not-given"), codes(bright.prove(tree(DARK))));
  }

  @Test
  void whatGivesTheComplaintAndIsNeverNamedIsListedByLikelihood() {
    Tree tree = MadeUp.tree("one", DARK, STEPS.replace("fault: wire weak", "refer: the office"));
    assertEquals(List.of(new Complaint.Uncovered("wire weak", 0.4)),
        LAMP.prove(tree).complaint().uncovered().stream()
            .map(one -> new Complaint.Uncovered(one.fault(), Math.round(one.likelihood() * 1e12) / 1e12)).toList());
    assertEquals(List.of(), proof(DARK).complaint().uncovered());
  }

  @Test
  void wordsOfAComplaintSayTheCallAndTheSights() {
    assertEquals("lever off or on; not seen: glow",
        Complaint.words(tree("call: lever off or on\nnot seen: glow\n").symptoms().orElseThrow()));
    assertEquals("every control at its first position; seen: glow",
        Complaint.words(tree("seen: glow\n").symptoms().orElseThrow()));
  }
}
