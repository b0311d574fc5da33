package rungbook.tree;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Parses exact decimals with a unit: {@code 24}, {@code 24.0 V}. The decimal separator is a period; there is no
 * thousands separator.
 */
public final class Numbers {

  /** In characters; no meter shows a longer number, and parsing one would cost time. */
  private static final int LONGEST = 20;

  private Numbers() {}

  /** @param unit as written; {@code ""} if there is none */
  public record Measured(BigDecimal number, String unit) {}

  public static Optional<Measured> read(String written) {
    int end = 0;
    while (end < written.length() && isDigit(written, end)) {
      end++;
    }
    String digits = written.substring(0, end);
    if (end > LONGEST || !isNumber(digits)) {
      return Optional.empty();
    }
    return Optional.of(new Measured(new BigDecimal(digits), written.substring(end).strip()));
  }

  private static boolean isDigit(String text, int at) {
    char c = text.charAt(at);
    return (c >= '0' && c <= '9') || c == '.' || (c == '-' && at == 0);
  }

  private static boolean isNumber(String digits) {
    int point = digits.indexOf('.');
    int first = digits.startsWith("-") ? 1 : 0;
    return digits.length() > first && point != first && point == digits.lastIndexOf('.')
        && point != digits.length() - 1;
  }
}
