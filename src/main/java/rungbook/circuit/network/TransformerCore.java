package rungbook.circuit.network;

import java.util.function.ToDoubleFunction;

/**
 * The core of a transformer: an ideal ratio with a series impedance on the secondary side.
 *
 * <p>It stamps y u uᵀ with u = (−n, n, 1, −1) on the nodes (pa, pb, sa, sb): a symmetric matrix of rank one, so
 * the network stays reciprocal.
 *
 * @param part key of the transformer
 * @param ratio n, secondary over primary volts without load
 * @param ohms series resistance, referred to the secondary
 * @param reactanceShare reactance over resistance of the series impedance
 * @param directPrimary primary admittance for direct current, siemens
 */
public record TransformerCore(
    String part, int pa, int pb, int sa, int sb, ToDoubleFunction<Draw> ratio, ToDoubleFunction<Draw> ohms,
    double reactanceShare, double directPrimary) {

  /** The four nodes in the order of u. */
  public int[] nodes() {
    return new int[] {pa, pb, sa, sb};
  }

  /** The vector u of the stamp. */
  public double[] turns(double ratio) {
    return new double[] {-ratio, ratio, 1, -1};
  }

  /** The series admittance y from its resistance, siemens. */
  public Phasor admittance(double ohms) {
    return new Phasor(ohms, reactanceShare * ohms).inverse();
  }
}
