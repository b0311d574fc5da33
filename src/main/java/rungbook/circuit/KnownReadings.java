package rungbook.circuit;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.sequence.ByNetwork;
import rungbook.circuit.solver.FaultedParameters;

/** What meters read on the networks of one block, so that no pair of leads is read twice on the same network. */
final class KnownReadings {

  /** So many are kept, 16 MB; then they are read again. */
  private static final int MOST_KEPT = 2_000_000;

  private final ByNetwork<Map<Probe, double[]>> rows = new ByNetwork<>();
  private int kept;

  /** By sample, coded as in {@link Reading}; null if it was not read yet. */
  double @Nullable [] of(byte[] modes, FaultedParameters faulted, Probe probe) {
    return rows.of(modes, faulted, HashMap::new).get(probe);
  }

  /** @param shown must not change afterward */
  void add(byte[] modes, FaultedParameters faulted, Probe probe, double[] shown) {
    kept += shown.length;
    rows.of(modes, faulted, HashMap::new).put(probe, shown);
  }

  /** To be called between two searches. */
  void forgetTooMany() {
    if (kept > MOST_KEPT) {
      rows.clear();
      kept = 0;
    }
  }
}
