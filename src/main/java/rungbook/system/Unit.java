package rungbook.system;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/** A unit after a number: {@code own = number · factor + offset}, where {@code own} is in the quantity's unit. */
record Unit(String own, BigDecimal factor, BigDecimal offset) {

  private static final Map<String, Unit> BY_NAME = Map.ofEntries(
      scaled("V", "V", "1"), scaled("mV", "V", "0.001"), scaled("kV", "V", "1000"),
      scaled("ohm", "Ω", "1"), scaled("ohms", "Ω", "1"), scaled("Ω", "Ω", "1"), scaled("\u2126", "Ω", "1"),
      scaled("kohm", "Ω", "1000"), scaled("kΩ", "Ω", "1000"), scaled("Mohm", "Ω", "1000000"),
      scaled("MΩ", "Ω", "1000000"),
      scaled("A", "A", "1"), scaled("mA", "A", "0.001"),
      scaled("uA", "µA", "1"), scaled("µA", "µA", "1"), scaled("μA", "µA", "1"),
      scaled("uF", "µF", "1"), scaled("µF", "µF", "1"), scaled("μF", "µF", "1"),
      scaled("F", "°F", "1"), scaled("°F", "°F", "1"),
      Map.entry("C", celsius()), Map.entry("°C", celsius()),
      scaled("inwc", "in. w.c.", "1"), scaled("in. w.c.", "in. w.c.", "1"));

  static Optional<Unit> named(String written) {
    return Optional.ofNullable(BY_NAME.get(written));
  }

  boolean of(String unit) {
    return own.equals(unit);
  }

  /** Converts a difference of two readings: the offset does not apply. */
  BigDecimal convertStep(BigDecimal difference) {
    return difference.multiply(factor);
  }

  BigDecimal convert(BigDecimal number) {
    return number.multiply(factor).add(offset);
  }

  private static Map.Entry<String, Unit> scaled(String name, String own, String factor) {
    return Map.entry(name, new Unit(own, new BigDecimal(factor), BigDecimal.ZERO));
  }

  private static Unit celsius() {
    return new Unit("°F", new BigDecimal("1.8"), new BigDecimal("32"));
  }
}
