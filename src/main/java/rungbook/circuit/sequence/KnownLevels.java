package rungbook.circuit.sequence;

import java.util.function.Supplier;
import rungbook.circuit.solver.FaultedParameters;

/** The levels of the networks of one block that were solved, so that none is solved again to move the relays. */
public final class KnownLevels {

  /** So many are kept, of the largest system some 100 MB; then they are found again. */
  private static final int MOST_KEPT = 40_000;

  private final LevelRows rows;
  private final ByNetwork<LoadLevels> levels = new ByNetwork<>();
  private int kept;

  public KnownLevels(CircuitModel model) {
    rows = new LevelRows(model.parameters().size());
  }

  LevelRows rows() {
    return rows;
  }

  LoadLevels of(byte[] modes, FaultedParameters faulted, Supplier<LoadLevels> first) {
    return levels.of(modes, faulted, () -> {
      kept++;
      return first.get();
    });
  }

  /** To be called between two searches. */
  public void forgetTooMany() {
    if (kept > MOST_KEPT) {
      levels.clear();
      kept = 0;
    }
  }
}
