package rungbook.proof.demand;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rungbook.circuit.Reading;
import rungbook.proof.plan.StrayVoltage;

/** How the readings of all installations spread, and whether they are stray voltages. */
final class ReadingSpread {

  /** A reading under this is of no interest, stray or not, volts. */
  private static final double LEAST_STRAY_VOLTS = 0.5;

  private ReadingSpread() {}

  /**
   * @param readings of each installation, coded as in {@link Reading}
   * @param lowImpedance the same leads at low impedance; empty if the question is no such voltage
   * @param drawn how many of the first installations are drawn at random; the others are corners of the tolerances
   */
  static Shown of(double[] readings, Optional<double[]> lowImpedance, int drawn) {
    double[] numbers = numbers(readings, readings.length);
    Optional<NoReading> other = Arrays.stream(readings).filter(reading -> !isNumber(reading)).mapToObj(NoReading::of)
        .findFirst();
    if (numbers.length == 0) {
      return new Shown.Nothing(other.orElseThrow());
    }
    double[] ofDrawn = numbers(readings, drawn);
    return new Shown.Amounts(numbers[0], median(ofDrawn.length == 0 ? numbers : ofDrawn), numbers[numbers.length - 1],
        lowImpedance.filter(low -> isStray(readings, low)).map(low -> median(numbers(low, drawn))), other);
  }

  private static boolean isStray(double[] readings, double[] low) {
    int[] large = IntStream.range(0, readings.length)
        .filter(i -> isNumber(readings[i]) && readings[i] >= LEAST_STRAY_VOLTS).toArray();
    long stray = Arrays.stream(large).filter(i -> StrayVoltage.isStray(readings[i], low[i])).count();
    return 2 * stray > large.length;
  }

  private static double[] numbers(double[] readings, int count) {
    return Arrays.stream(readings, 0, count).filter(ReadingSpread::isNumber).sorted().toArray();
  }

  private static double median(double[] sorted) {
    OptionalDouble middle = IntStream.of((sorted.length - 1) / 2, sorted.length / 2).mapToDouble(i -> sorted[i])
        .average();
    return middle.orElse(0);
  }

  private static boolean isNumber(double reading) {
    return reading >= 0 && reading < Reading.OVERLOAD;
  }
}
