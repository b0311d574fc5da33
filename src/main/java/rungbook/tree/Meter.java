package rungbook.tree;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import rungbook.system.Quantity;

/**
 * What a meter can measure, and how well.
 *
 * @param id the file's name without {@code .md}
 */
public record Meter(String id, String title, Map<Quantity, Scale> scales) {

  public Meter {
    scales = Map.copyOf(scales);
  }

  /**
   * One quantity of a meter. Numbers are in the quantity's unit.
   *
   * @param digit the display's last digit
   * @param percent of the reading, part of the accuracy
   * @param digits counts of the last digit, the other part of the accuracy
   * @param inputOhms input resistance on a volts scale, in ohms; empty for other quantities
   */
  public record Scale(
      BigDecimal low, BigDecimal high, BigDecimal digit, BigDecimal percent, BigDecimal digits,
      Optional<BigDecimal> inputOhms) {

    /** The largest error at a reading: ±(percent of reading + digits). */
    public BigDecimal errorAt(BigDecimal reading) {
      return reading.abs().multiply(percent).movePointLeft(2).add(digits.multiply(digit));
    }
  }

  public Optional<Scale> scale(Quantity quantity) {
    return Optional.ofNullable(scales.get(quantity));
  }

  /**
   * The meter assumed where a library names none: 600 V, 6000 counts, ±(1 % + 3 digits), 10 MΩ and 3 kΩ. The accuracy
   * is from a meter manufacturer's help page. That two thermometers agree within 2 °F is common practice, no source, as
   * the rest is.
   */
  public static Meter common() {
    Scale volts = scale("0", "600", "0.1", "1", "3", Optional.of("10000000"));
    return new Meter("common", "Common meter", Map.of(
        Quantity.AC_VOLTS, volts,
        Quantity.AC_VOLTS_LOW_IMPEDANCE, scale("0", "600", "0.1", "2", "3", Optional.of("3000")),
        Quantity.DC_VOLTS, scale("-600", "600", "0.1", "1", "3", Optional.of("10000000")),
        Quantity.OHMS, scale("0", "40000000", "0.1", "1", "5", Optional.empty()),
        Quantity.AC_AMPS, scale("0", "400", "0.01", "2", "5", Optional.empty()),
        Quantity.DC_MICROAMPS, scale("0", "600", "0.1", "1", "2", Optional.empty()),
        Quantity.MICROFARADS, scale("0", "1000", "0.1", "2", "5", Optional.empty()),
        Quantity.TEMPERATURE, scale("-40", "750", "0.1", "1", "10", Optional.empty()),
        Quantity.TEMPERATURE_DIFFERENCE, scale("0", "200", "0.1", "0", "20", Optional.empty()),
        Quantity.PRESSURE, scale("0", "40", "0.01", "1", "2", Optional.empty())));
  }

  private static Scale scale(String low, String high, String digit, String percent, String digits,
      Optional<String> inputOhms) {
    return new Scale(new BigDecimal(low), new BigDecimal(high), new BigDecimal(digit), new BigDecimal(percent),
        new BigDecimal(digits),
        inputOhms.map(BigDecimal::new));
  }
}
