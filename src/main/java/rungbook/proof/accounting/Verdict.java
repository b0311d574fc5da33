package rungbook.proof.accounting;

/**
 * What a reading says about an interval when the meter's uncertainty is taken off on either side (rule of ISO 14253-1).
 */
public enum Verdict {
  INSIDE,
  OUTSIDE,
  INCONCLUSIVE;

  /** @param expandedUncertainty {@code U = 2 u}, about 95 % */
  public static Verdict of(double reading, Risks.Interval interval, double expandedUncertainty) {
    if (reading >= interval.low() + expandedUncertainty && reading <= interval.high() - expandedUncertainty) {
      return INSIDE;
    }
    boolean outside = reading <= interval.low() - expandedUncertainty
        || reading >= interval.high() + expandedUncertainty;
    return outside ? OUTSIDE : INCONCLUSIVE;
  }
}
