package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.Proof;
import rungbook.source.Witness;

/** Faults that come and go, on a bench where every share is worked out by hand. */
class IntermittentProofTest {

  private static final double ROUNDING = 1e-12;

  private static EndShares ends(IntermittentFaults all, String fault) {
    return all.faults().stream().filter(one -> one.name().equals(fault)).findFirst().orElseThrow().ends();
  }

  /** Gone before the look it is healthy; gone after it, every point reads good, and the lamp is blamed. */
  @Test
  void eachCheckOnTheWayCountsAlike() {
    IntermittentFaults all = BenchProofs.proof(BenchProofs.library(false, "", "")).intermittent();
    assertEquals(0.5, ends(all, "wire one open").healthy(), ROUNDING);
    assertEquals(0.5, ends(all, "wire one open").mistaken(), ROUNDING);
    assertEquals(1.0 / 3, ends(all, "wire two open").healthy(), ROUNDING);
    assertEquals(2.0 / 3, ends(all, "wire two open").mistaken(), ROUNDING);
    assertEquals(1.0 / 3, ends(all, "lamp open").healthy(), ROUNDING);
    assertEquals(2.0 / 3, ends(all, "lamp open").found(), ROUNDING);
    assertEquals((2 * 0.5 + 2.0 / 3 + 0.5) / 8, all.all().mistaken(), ROUNDING, "by likelihood, of 8");
  }

  @Test
  void onlyTheLampIsFoundByExclusion() {
    Proof proof = BenchProofs.proof(BenchProofs.library(false, "", ""));
    IntermittentFaults all = proof.intermittent();
    assertEquals(List.of("Lamp"),
        all.excluded().stream().map(one -> proof.tree().steps().get(one.finding()).title()).toList());
    assertEquals(1, all.excluded().get(0).share(), ROUNDING);
  }

  @Test
  void readingAgainShowsThePartAndCatchesWhatHasGone() {
    IntermittentFaults all = BenchProofs.proof(BenchProofs.library(true, "", "")).intermittent();
    assertEquals(List.of(), all.excluded());
    assertEquals(0, all.all().mistaken(), ROUNDING);
    assertEquals(0.5, ends(all, "wire one open").referred(), ROUNDING);
    assertEquals(0.25, ends(all, "lamp open").healthy(), ROUNDING);
    assertEquals(0.75, ends(all, "lamp open").referred(), ROUNDING, "gone from the last look on too");
  }

  @Test
  void aWrongPartHasAWayOnWhichTheFaultIsGoneAsLateAsItCanBe() {
    IntermittentFaults.WrongPart first = BenchProofs.proof(BenchProofs.library(false, "", "")).intermittent()
        .wrongParts().get(0);
    assertEquals("wire one open", first.fault());
    assertEquals("Lamp", first.title());
    assertEquals("A to C", first.goneFrom());
    assertEquals(2 * 0.5 / 8, first.likelihood(), ROUNDING);
    assertEquals(List.of("Look", "A to C", "B to C", "Lamp"),
        first.path().stops().stream().map(Witness.Stop::step).toList());
  }

  @Test
  void nothingIsKnownAlreadyAtACheckThatReadsAgain() {
    assertTrue(BenchProofs.library(true, "", "").tree("example").orElseThrow().problems().stream()
        .noneMatch(problem -> problem.code().name().matches("check-.*|answer-.*|again-.*")));
    assertTrue(BenchProofs.proof(BenchProofs.library(true, "", "")).problems().stream()
        .noneMatch(problem -> problem.code().name().matches("check-tells-nothing|way-untaken|answer-impossible")));
  }
}
