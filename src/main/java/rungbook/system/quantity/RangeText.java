package rungbook.system.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.system.Interval;
import rungbook.system.Quantity;

/**
 * A range as a system's text writes it, {@code 40 to 70 F} or {@code 0 F}, in the unit of what is measured.
 *
 * @param range empty if it cannot be read
 * @param wrong why not, to follow the quantity's name
 */
record RangeText(Optional<Interval> range, String wrong) {

  private static final String N = "(-?\\d{1,12}(?:\\.\\d{1,9})?)";
  private static final Pattern FORM = Pattern.compile(N + "(?: to " + N + ")? ?([^\\d\\s].*+)?", Pattern.DOTALL);

  static RangeText of(String written, Quantity kind) {
    Matcher form = FORM.matcher(written);
    if (!form.matches() || form.group(3) == null) {
      return wrong("has `" + written + "`, which is no range with a unit");
    }
    Optional<BigDecimal> low = kind.inOwnUnit(new BigDecimal(form.group(1)), form.group(3));
    if (low.isEmpty()) {
      return wrong("has `" + written + "`, and " + kind.words() + " is in " + kind.unit());
    }
    Optional<BigDecimal> high = form.group(2) == null ? low
        : kind.inOwnUnit(new BigDecimal(form.group(2)), form.group(3));
    return of(written, low.get(), high.orElse(low.get()));
  }

  private static RangeText of(String written, BigDecimal low, BigDecimal high) {
    if (low.compareTo(high) > 0) {
      return wrong("has `" + written + "`, which ends below where it begins");
    }
    return low.signum() < 0 ? wrong("has `" + written + "`, which is below zero")
        : new RangeText(Optional.of(new Interval(low.doubleValue(), high.doubleValue())), "");
  }

  private static RangeText wrong(String why) {
    return new RangeText(Optional.empty(), why);
  }
}
