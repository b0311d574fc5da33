package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.network.Tolerance;

/** The definition of a fractional factorial of resolution IV: each three factors meet in every combination as often. */
class SamplesTest {

  @Test
  void fewCornersHaveEachThreeTolerancesInEveryCombination() {
    List<Draw> corners = Samples.fewCorners().draws().subList(1, Samples.fewCorners().size());
    assertTrue(corners.size() < Samples.corners().size() / 4, "few");
    Tolerance[] all = Tolerance.values();
    for (int a = 0; a < all.length; a++) {
      for (int b = a + 1; b < all.length; b++) {
        for (int c = b + 1; c < all.length; c++) {
          Map<List<Double>, Integer> met = new HashMap<>();
          for (Draw corner : corners) {
            met.merge(List.of(corner.at(all[a], ""), corner.at(all[b], ""), corner.at(all[c], "")), 1, Integer::sum);
          }
          assertEquals(8, met.size());
          assertEquals(1, met.values().stream().distinct().count(), met.toString());
        }
      }
    }
  }
}
