package rungbook.circuit;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.sequence.IslandCases;
import rungbook.circuit.sequence.Islands;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.system.Terminal;

/** What meters read on the islands of one block, so that no pair of leads is read twice on the same island. */
final class KnownReadings {

  /** So many are kept, 16 MB; then they are read again. */
  private static final int MOST_KEPT = 2_000_000;

  private final CircuitNetwork network;
  private final IslandCases cases;
  private final Map<Probe, Integer> islands = new HashMap<>();
  private final Map<IslandCases.Key, Map<Probe, double[]>> rows = new HashMap<>();
  private int kept;

  /** @param cases of the same block */
  KnownReadings(CircuitNetwork network, IslandCases cases) {
    this.network = network;
    this.cases = cases;
  }

  /** What a probe has read: by sample, coded as in {@link Reading}; null if it is not known. */
  double @Nullable [] find(Probe probe, byte[] modes, FaultedParameters faulted) {
    Map<Probe, double[]> known = rows.get(key(probe, modes, faulted));
    return known == null ? null : known.get(probe);
  }

  /** @param shown must not change afterward */
  void add(Probe probe, byte[] modes, FaultedParameters faulted, double[] shown) {
    kept += shown.length;
    rows.computeIfAbsent(key(probe, modes, faulted), key -> new HashMap<>()).put(probe, shown);
  }

  private IslandCases.Key key(Probe probe, byte[] modes, FaultedParameters faulted) {
    return cases.key(islands.computeIfAbsent(probe, this::island), modes, faulted);
  }

  private int island(Probe probe) {
    return cases.islands().ofNodes(node(probe.red()), node(probe.black()));
  }

  private int node(Terminal terminal) {
    return network.node(terminal).orElse(0);
  }

  /** To be called between two searches. */
  void forgetTooMany() {
    if (kept > MOST_KEPT) {
      rows.clear();
      kept = 0;
    }
  }
}
