package rungbook.pack.reading;

import java.math.BigDecimal;
import rungbook.system.Quantity;

/** A number with its unit as a technician writes it: {@code 20 V}, {@code 20 MΩ}. */
final class NumberWords {

  private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1_000);

  private NumberWords() {}

  static String of(BigDecimal value, Quantity quantity) {
    if (quantity != Quantity.OHMS || value.compareTo(THOUSAND) < 0) {
      return plain(value) + " " + quantity.unit();
    }
    boolean mega = value.compareTo(MILLION) >= 0;
    return plain(value.movePointLeft(mega ? 6 : 3)) + (mega ? " M" : " k") + quantity.unit();
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
