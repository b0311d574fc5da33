package rungbook.circuit.sequence;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import rungbook.circuit.solver.FaultedParameters;

/** The levels of the islands of one block that were solved, so that none is solved again to move the relays. */
public final class KnownLevels {

  /** So many are kept, of the largest system some 100 MB; then they are found again. */
  private static final int MOST_KEPT = 40_000;

  private final LevelRows rows;
  private final IslandCases cases;
  private final int[] islandOfLoad;
  private final int[] islandOfFuse;
  private final Map<IslandCases.Key, LoadLevels> levels = new HashMap<>();

  /** @param cases of the same block */
  public KnownLevels(CircuitModel model, IslandCases cases) {
    rows = new LevelRows(model.parameters().size());
    this.cases = cases;
    islandOfLoad = new int[model.logic().loads().size()];
    islandOfFuse = new int[model.logic().fuses().size()];
    for (int branch : model.logic().loadBranches()) {
      islandOfLoad[model.logic().loadOf(branch)] = cases.islands().ofBranch(branch);
    }
    for (int branch : model.logic().fuseBranches()) {
      islandOfFuse[model.logic().fuseOf(branch)] = cases.islands().ofBranch(branch);
    }
  }

  LevelRows rows() {
    return rows;
  }

  /** @param first finds the levels of the whole network */
  LoadLevels of(byte[] modes, FaultedParameters faulted, Supplier<LoadLevels> first) {
    if (!cases.isDivided(faulted)) {
      return levels.computeIfAbsent(cases.key(Islands.WHOLE, modes, faulted), key -> first.get());
    }
    LoadLevels[] parts = new LoadLevels[cases.islands().count()];
    LoadLevels whole = null;
    for (int island = 0; island < parts.length; island++) {
      IslandCases.Key key = cases.key(island, modes, faulted);
      LoadLevels part = levels.get(key);
      if (part == null) {
        whole = whole == null ? first.get() : whole;
        part = whole;
        levels.put(key, part);
      }
      parts[island] = part;
    }
    return whole == null ? LoadLevels.joined(parts, islandOfLoad, islandOfFuse, rows) : whole;
  }

  /** To be called between two searches. */
  public void forgetTooMany() {
    if (levels.size() > MOST_KEPT) {
      levels.clear();
    }
  }
}
