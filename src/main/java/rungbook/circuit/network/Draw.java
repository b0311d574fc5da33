package rungbook.circuit.network;

/** One installation drawn from the tolerance box. */
@FunctionalInterface
public interface Draw {

  /** A part's position within a tolerance: −1 at the low end, 1 at the high end. */
  double at(Tolerance tolerance, String part);

  /** Every quantity at the middle of its tolerance. */
  Draw MIDDLE = (tolerance, part) -> 0;
}
