package rungbook.proof.accounting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The measures on a small matrix whose values follow from their definitions by hand. */
class TestabilityMeasuresTest {

  /**
   * Rows f1 = 110, f2 = 110, f3 = 011, f4 = 000 with likelihoods 4, 3, 2, 1: f1 and f2 share a finding, f4 has none.
   */
  private static final TestabilityMeasures VECTOR = TestabilityMeasures.of(new double[] {4, 3, 2, 1},
      new double[][] {{1, 0}, {1, 0}, {0, 1}, {0, 0}}, new int[] {2, 1});

  @Test
  void faultsThatShowUnderNoCheckAreNotDetected() {
    assertEquals(0.9, VECTOR.detected(), 1e-12);
  }

  @Test
  void isolationCountsGroupsUpToTheirSize() {
    assertEquals(2.0 / 9, VECTOR.isolatedTo(1), 1e-12);
    assertEquals(1, VECTOR.isolatedTo(2), 1e-12);
    assertEquals(1, VECTOR.isolatedTo(3), 1e-12);
  }

  @Test
  void groupsAreAveragedByLikelihood() {
    assertEquals(16.0 / 9, VECTOR.meanGroup(), 1e-12);
  }

  @Test
  void nothingToFindIsNoDivisionByZero() {
    TestabilityMeasures none = TestabilityMeasures.of(new double[0], new double[0][0], new int[0]);
    assertEquals(0, none.detected());
    assertEquals(0, none.isolatedTo(1));
    assertEquals(0, none.meanGroup());
  }
}
