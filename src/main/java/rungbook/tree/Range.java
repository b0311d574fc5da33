package rungbook.tree;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Readings between two ends, in the quantity's unit. The range is open where an end is empty.
 *
 * @param lowIncluded whether the range includes {@code low} ({@code 24 or more}, {@code 24 to 28}) or not ({@code over
 * 24})
 */
public record Range(Optional<BigDecimal> low, boolean lowIncluded, Optional<BigDecimal> high, boolean highIncluded) {

  public static Range between(BigDecimal low, BigDecimal high) {
    return new Range(Optional.of(low), true, Optional.of(high), true);
  }

  public static Range over(BigDecimal low, boolean included) {
    return new Range(Optional.of(low), included, Optional.empty(), false);
  }

  public static Range under(BigDecimal high, boolean included) {
    return new Range(Optional.empty(), false, Optional.of(high), included);
  }

  public boolean contains(BigDecimal reading) {
    boolean aboveLow = low.map(end -> compare(reading, end, lowIncluded)).orElse(true);
    return aboveLow && high.map(end -> compare(end, reading, highIncluded)).orElse(true);
  }

  public boolean isBackwards() {
    return low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0;
  }

  private static boolean compare(BigDecimal upper, BigDecimal lower, boolean included) {
    int order = upper.compareTo(lower);
    return included ? order >= 0 : order > 0;
  }
}
