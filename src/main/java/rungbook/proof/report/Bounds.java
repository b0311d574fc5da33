package rungbook.proof.report;

import java.math.BigDecimal;
import rungbook.proof.accounting.ReportNumbers;

/** The range that a limit may have, in words. */
public final class Bounds {

  private Bounds() {}

  /** Whether a limit can be between the cases that must read below it and those that must read above it. */
  public static boolean leaveRoom(Proof.Limit limit) {
    return limit.above().isEmpty() || limit.upTo().isEmpty()
        || limit.above().get().shown().compareTo(limit.upTo().get().shown()) < 0;
  }

  /** {@code over 3.4 V, up to 21.2 V}; {@code anywhere}; {@code nowhere}. */
  public static String words(Proof.Limit limit, String unit) {
    if (!leaveRoom(limit)) {
      return "nowhere";
    }
    String above = limit.above().map(bound -> "over " + with(bound.shown(), unit)).orElse("");
    String upTo = limit.upTo().map(bound -> "up to " + with(bound.shown(), unit)).orElse("");
    return above.isEmpty() && upTo.isEmpty() ? "anywhere"
        : above + (above.isEmpty() || upTo.isEmpty() ? "" : ", ") + upTo;
  }

  private static String with(BigDecimal number, String unit) {
    return ReportNumbers.number(number) + " " + unit;
  }
}
