package rungbook.circuit.network;

import java.util.function.ToDoubleFunction;

/**
 * The core of a transformer: an ideal ratio behind a series impedance on the secondary side.
 *
 * <p>It stamps y u uᵀ with u = (−n, n, 1, −1) on (pa, pb, sa, sb): a symmetric matrix of rank one, so
 * the network stays reciprocal and a changed transformer is a low-rank change.
 *
 * @param ratio secondary over primary volts, without load
 * @param ohms the series resistance, seen from the secondary
 * @param directPrimary what a direct current sees on the primary side, siemens
 */
public record TransformerCore(
    String part, int pa, int pb, int sa, int sb, ToDoubleFunction<Draw> ratio, ToDoubleFunction<Draw> ohms,
    double directPrimary) {

  /** Reactance over resistance of a small transformer (common practice, no source). */
  static final double REACTANCE_SHARE = 0.3;

  public int[] nodes() {
    return new int[] {pa, pb, sa, sb};
  }

  public double[] turns(double ratio) {
    return new double[] {-ratio, ratio, 1, -1};
  }

  public static Phasor admittance(double ohms) {
    return new Phasor(ohms, REACTANCE_SHARE * ohms).inverse();
  }
}
