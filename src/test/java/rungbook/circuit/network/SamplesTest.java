package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SamplesTest {

  private static List<Double> at(Draw draw, String part) {
    return Arrays.stream(Tolerance.values()).map(tolerance -> draw.at(tolerance, part)).toList();
  }

  /**
   * Worked out from the formula in Python, with its integers cut to 64 bits: reports stay the same from year to year.
   */
  @ParameterizedTest
  @CsvSource({"1, 0, SUPPLY, supply, -0.11303830412900395", "1, 1, LOAD, fan, 0.5961054501881697",
      "2, 7, CAPACITANCE, cable, -0.9542035645406208"})
  void aSeedGivesTheSameDrawsEverywhere(long seed, int sample, Tolerance tolerance, String part, double draw) {
    assertEquals(draw, Samples.seeded(seed, 8).draws().get(sample).at(tolerance, part));
  }

  /** A uniform draw between −1 and 1 has a mean of 0 and a variance of 1/3; 4096 of them within 5 standard errors. */
  @Test
  void drawsAreUniform() {
    double[] draws = Samples.seeded(1, 4096).draws().stream().mapToDouble(draw -> draw.at(Tolerance.LOAD, "fan"))
        .toArray();
    assertEquals(0, Arrays.stream(draws).average().orElseThrow(), 5 * Math.sqrt(1 / 3.0 / 4096));
    assertEquals(1 / 3.0, Arrays.stream(draws).map(x -> x * x).average().orElseThrow(),
        5 * Math.sqrt((1 / 5.0 - 1 / 9.0) / 4096));
    assertEquals(4096, Samples.seeded(1, 4096).size());
  }

  /**
   * The middle, and each of the 2 to the 7th corners of the healthy system's seven tolerances once, for whatever part.
   * The fault's is at either end with either end of any other.
   */
  @Test
  void cornersAreAllDifferent() {
    List<Draw> corners = Samples.corners().draws();
    assertEquals(Collections.nCopies(8, 0.0), at(corners.get(0), "fan"));
    var seen = new HashSet<List<Double>>();
    for (Draw corner : corners.subList(1, corners.size())) {
      assertEquals(at(corner, "fan"), at(corner, "cable"));
      at(corner, "fan").forEach(draw -> assertEquals(1, Math.abs(draw)));
      seen.add(at(corner, "fan"));
    }
    assertEquals(List.of(128, 129), List.of(seen.size(), corners.size()));
    assertEquals(128, seen.stream().map(ends -> ends.subList(0, 7)).distinct().count());
    for (int other = 0; other < 7; other++) {
      int with = other;
      assertEquals(4, seen.stream().map(ends -> List.of(ends.get(7), ends.get(with))).distinct().count());
    }
  }

  /** Full supply; transformers, loads and the fault at either end, all else in the middle. */
  @Test
  void highVoltageIsAtFullSupply() {
    var ends = new HashSet<List<Double>>();
    for (Draw draw : Samples.highVoltage().draws()) {
      ends.add(at(draw, "fan"));
    }
    var expected = new HashSet<List<Double>>();
    for (double transformer : new double[] {-1, 1}) {
      for (double load : new double[] {-1, 1}) {
        expected.add(List.of(1.0, 0.0, 0.0, transformer, load, 0.0, 0.0, -1.0));
        expected.add(List.of(1.0, 0.0, 0.0, transformer, load, 0.0, 0.0, 1.0));
      }
    }
    assertEquals(expected, ends);
    assertEquals(8, Samples.highVoltage().size());
  }
}
