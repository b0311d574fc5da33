package rungbook.circuit;

import java.util.HashMap;
import java.util.Map;
import rungbook.circuit.sequence.ByNetwork;
import rungbook.circuit.solver.FaultedParameters;

/** What meters read on the networks of one block, so that no pair of leads is read twice on the same network. */
final class KnownReadings {

  /** So many are kept, 16 MB; then they are read again. */
  private static final int MOST_KEPT = 2_000_000;

  private final ByNetwork<Map<Probe, double[]>> rows = new ByNetwork<>();
  private int kept;

  /** What was read on a network: by sample, coded as in {@link Reading}. */
  Map<Probe, double[]> on(byte[] modes, FaultedParameters faulted) {
    return rows.of(modes, faulted, HashMap::new);
  }

  /**
   * @param network what was read on it before
   * @param shown must not change afterward
   */
  void add(Map<Probe, double[]> network, Probe probe, double[] shown) {
    kept += shown.length;
    network.put(probe, shown);
  }

  /** To be called between two searches. */
  void forgetTooMany() {
    if (kept > MOST_KEPT) {
      rows.clear();
      kept = 0;
    }
  }
}
