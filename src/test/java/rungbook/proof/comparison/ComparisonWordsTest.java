package rungbook.proof.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.proof.comparison.ProofComparison.CaseChange;
import rungbook.proof.comparison.ProofComparison.EndShare;
import rungbook.proof.comparison.ProofComparison.Figures;

class ComparisonWordsTest {

  private static final Figures FIGURES = new Figures(12, 0.94, 0, 7.04, 69);
  private static final List<EndShare> FUSE = List.of(new EndShare("Fuse", "fuse open", 1));
  private static final List<EndShare> BOARD = List.of(new EndShare("Board", "board dead", 0.6),
      new EndShare("Fuse", "fuse open", 0.395), new EndShare("Nothing", "healthy", 0.005));

  private static CaseChange change(String name, boolean isHealthy, boolean isWorse) {
    return new CaseChange(name, isHealthy, 1, FUSE, BOARD, isWorse);
  }

  private static String summary(CaseChange... changes) {
    return ComparisonWords.summary(new ProofComparison(FIGURES, FIGURES, List.of(changes)));
  }

  @Test
  void theSummaryCountsFaultsAndWhatIsWorse() {
    assertEquals("every fault ends where it did", summary());
    assertEquals("1 fault ends elsewhere than before", summary(change("a", false, false)));
    assertEquals("2 faults end elsewhere than before; 1 of these is worse",
        summary(change("a", false, true), change("b", false, false)));
    assertEquals("1 fault ends elsewhere than before, and so do healthy systems; all of this is worse",
        summary(change("healthy", true, true), change("a", false, true)));
    assertEquals("healthy systems end elsewhere than before", summary(change("healthy", true, false)));
  }

  @Test
  void aShareIsSaidWhereThereAreSeveralEnds() {
    assertEquals("fuse open: ended at Fuse, now at Board (60 %), Fuse (40 %)",
        ComparisonWords.of(change("fuse open", false, true)));
    assertEquals("healthy systems: ended at Fuse, now at Board (60 %), Fuse (40 %)",
        ComparisonWords.of(change("healthy", true, true)));
  }

  @Test
  void oneTitleForTwoConclusionsIsTold() {
    List<EndShare> now = List.of(new EndShare("Fuse", "fuse open, fuse holder loose", 1));
    assertEquals("fuse open: ended at Fuse, which says fuse open, now at Fuse, which says fuse open, fuse holder loose",
        ComparisonWords.of(new CaseChange("fuse open", false, 1, FUSE, now, false)));
  }

  @Test
  void aFaultMayHaveComeOrGone() {
    assertEquals("fuse open: not followed before, now ends at Fuse",
        ComparisonWords.of(new CaseChange("fuse open", false, 1, List.of(), FUSE, false)));
    assertEquals("fuse open: ended at Fuse, no longer followed",
        ComparisonWords.of(new CaseChange("fuse open", false, 1, FUSE, List.of(), false)));
  }

  @Test
  void onlyFiguresThatChangedAreSaid() {
    var now = new Figures(12, 1, 0.02, 7.04, 70);
    assertEquals(List.of("detected: 94 % before, now 100 %", "healthy systems that get a fault: 0 % before, now 2 %",
        "minutes on average: 69 before, now 70"),
        ComparisonWords.figures(new ProofComparison(FIGURES, now, List.of())));
  }
}
