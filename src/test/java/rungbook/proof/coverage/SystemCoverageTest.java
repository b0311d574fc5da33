package rungbook.proof.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SystemCoverageTest {

  private final SystemCoverage lamp = TwoTrees.coverage().get(0);

  private Cell cell(int fault, int complaint) {
    return lamp.faults().get(fault).cells().get(complaint).orElseThrow();
  }

  @Test
  void treesOfOneSystemAreTogether() {
    assertEquals(List.of("lamp"), TwoTrees.coverage().stream().map(SystemCoverage::system).toList());
    assertEquals(2, lamp.trees().size());
  }

  @Test
  void faultHasACellOnlyOnAComplaintThatItGives() {
    assertEquals(List.of(0), SystemCoverage.given(lamp.faults().get(0)));
    assertEquals(List.of(1), SystemCoverage.given(lamp.faults().get(1)));
  }

  /** Three minutes and a check in the first tree, and once more the same in the other. */
  @Test
  void cellSaysWhereAFaultIsFoundAndWithHowMuchWork() {
    Cell dead = cell(0, 0);
    assertEquals(Cell.Result.FOUND, dead.result());
    assertEquals("other", dead.place().orElseThrow().tree());
    assertEquals(2, dead.journey().checks(), 1e-12);
    assertEquals(6, dead.journey().minutes(), 1e-12);
    assertEquals(1, dead.gives(), 1e-12);
  }

  @Test
  void whatNoTreeFindsIsListedWithItsShareOfTheLikelihood() {
    assertEquals(Cell.Result.NEVER_FOUND, cell(1, 1).result());
    assertEquals(List.of("wire weak"), lamp.uncovered().stream().map(SystemCoverage.Row::fault).toList());
    assertEquals(2.0 / 3, lamp.uncoveredShare(), 1e-12);
    assertTrue(lamp.faults().get(0).isCovered());
  }
}
