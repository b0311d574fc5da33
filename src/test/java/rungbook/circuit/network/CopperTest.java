package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class CopperTest {

  /** Handbook wire table, Ω per 1000 ft at 20 °C. */
  @ParameterizedTest
  @CsvSource({"16, 4.016", "18, 6.385", "20, 10.15", "22, 16.14", "24, 25.67"})
  void agreesWithTheHandbookAt20Celsius(int awg, double ohms) {
    assertEquals(ohms, Copper.ohms(awg, 1000, 20), ohms * 1e-3);
  }

  /** NEC Chapter 9 Table 8, solid uncoated, Ω per 1000 ft at 75 °C; the third significant digit. */
  @ParameterizedTest
  @CsvSource({"16, 4.89", "18, 7.77"})
  void agreesWithTheCodeAt75Celsius(int awg, double ohms) {
    assertEquals(ohms, Copper.ohms(awg, 1000, 75), 0.01);
  }

  /** Computed from ASTM B258 and IEC 60028. */
  @ParameterizedTest
  @CsvSource({"18, 7.765, 0.001", "20, 12.35, 0.01", "22, 19.63, 0.01"})
  void solidConductorsAt75Celsius(int awg, double ohms, double within) {
    assertEquals(ohms, Copper.ohms(awg, 1000, 75), within);
  }

  /** ASTM B258. */
  @Test
  void gaugeEighteenMeasures() {
    assertEquals(0.0403, Copper.diameterMeters(18) / 0.0254, 5e-5);
    assertEquals(0.8230e-6, Copper.areaSquareMeters(18), 5e-11);
  }

  /** IEC 60228 allows class 1 and 2 conductors at most this at 20 °C, Ω/km. */
  @ParameterizedTest
  @CsvSource({"0.5, 36.0", "0.75, 24.5", "1.0, 18.1", "1.5, 12.1"})
  void nominalMetricSizesStayUnderTheMaxima(double squareMillimeters, double most) {
    double ohms = Copper.ohms(squareMillimeters * 1e-6, 1000, 20, Copper.OHM_METERS_AT_20_C);
    assertEquals(most, ohms, most * 0.07);
    assertTrue(ohms < most);
  }

  /** Published 24 VAC chart: 10 % drop, 20 W at 21.6 V, 0.8 mm wire, ρ = 0.0175: 37.23 m. */
  @Test
  void lengthForTenPercentDrop() {
    double area = Math.PI * 0.8e-3 * 0.8e-3 / 4;
    double perMeter = 2 * Copper.ohms(area, 1, 20, 0.0175e-6);
    double amps = 20 / 21.6;
    assertEquals(37.23, 2.4 / amps / perMeter, 0.01);
  }
}
