package rungbook.circuit.network;

/** One installation out of all that the tolerances allow. */
@FunctionalInterface
public interface Draw {

  /** Where a part stands within its spread: −1 at the low end, 1 at the high end. */
  double at(Tolerance tolerance, String part);

  /** Everything at the middle. */
  Draw MIDDLE = (tolerance, part) -> 0;
}
