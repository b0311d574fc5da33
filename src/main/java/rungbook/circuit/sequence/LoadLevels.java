package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.ComplexRows;

/**
 * The voltage level of every load, [load][sample], and whether every fuse is overloaded, [fuse][sample]. Nearly all
 * rows have one level in every sample and are shared, so the levels of many networks can be kept.
 */
final class LoadLevels {

  private static final int MOST = 3;

  private final byte[][] loads;
  private final byte[][] fuses;
  private final LevelRows rows;

  LoadLevels(int loadCount, int fuseCount, LevelRows rows) {
    this.rows = rows;
    loads = new byte[loadCount][];
    Arrays.fill(loads, rows.of(MOST));
    fuses = new byte[fuseCount][];
    Arrays.fill(fuses, rows.of(0));
  }

  /**
   * The levels of a network of which each island is in another one.
   *
   * @param parts by island
   */
  static LoadLevels joined(LoadLevels[] parts, int[] islandOfLoad, int[] islandOfFuse, LevelRows rows) {
    var joined = new LoadLevels(islandOfLoad.length, islandOfFuse.length, rows);
    for (int load = 0; load < islandOfLoad.length; load++) {
      joined.loads[load] = parts[islandOfLoad[load]].loads[load];
    }
    for (int fuse = 0; fuse < islandOfFuse.length; fuse++) {
      joined.fuses[fuse] = parts[islandOfFuse[fuse]].fuses[fuse];
    }
    return joined;
  }

  /**
   * Lowers a load's level to that of one of its branches: 0 without voltage, 1 humming, 2 enough to hold, 3 enough to
   * pull in.
   *
   * @param share the fraction of the branch's voltage that its load gets, for each sample
   * @param onVolts pick-up voltage of each sample
   * @param offVolts drop-out voltage of each sample
   */
  void updateLoad(int load, ComplexRows volts, Branch branch, double[] share, double[] onVolts, double[] offVolts,
      double humShare) {
    double[] squares = rows.squares(volts, branch.a(), branch.b());
    if (pullsIn(squares, share, onVolts)) {
      return; // no level is higher
    }
    if (isDead(squares, share, onVolts, offVolts, humShare)) {
      loads[load] = rows.of(0);
      return;
    }
    byte[] row = loads[load].clone();
    for (int s = 0; s < row.length; s++) {
      double square = squares[s] * share[s] * share[s];
      double on = onVolts[s] * onVolts[s];
      double off = offVolts[s] * offVolts[s];
      int level = square >= on ? MOST : square >= off ? 2 : square >= on * humShare * humShare ? 1 : 0;
      row[s] = (byte) Math.min(row[s], level);
    }
    loads[load] = rows.shared(row);
  }

  /** Whether each sample has enough to pull in, as most loads have that are on. */
  private static boolean pullsIn(double[] squares, double[] share, double[] onVolts) {
    for (int s = 0; s < squares.length; s++) {
      if (!(squares[s] * share[s] * share[s] >= onVolts[s] * onVolts[s])) {
        return false;
      }
    }
    return true;
  }

  /** Whether no sample has enough for anything, as most loads have that are off. */
  private static boolean isDead(double[] squares, double[] share, double[] onVolts, double[] offVolts,
      double humShare) {
    for (int s = 0; s < squares.length; s++) {
      double square = squares[s] * share[s] * share[s];
      double on = onVolts[s] * onVolts[s];
      if (square >= on || square >= offVolts[s] * offVolts[s] || square >= on * humShare * humShare) {
        return false;
      }
    }
    return true;
  }

  /**
   * Marks the samples in which a fuse's current |V y| is more than {@code mostAmps}.
   *
   * @param contact the fuse's branch, with any resistance that a fault adds in series
   */
  void updateFuse(int fuse, ComplexRows volts, BranchAdmittance contact, double mostAmps) {
    double[] squares = rows.squares(volts, contact.a(), contact.b());
    byte[] before = fuses[fuse];
    byte[] row = before;
    for (int s = 0; s < squares.length; s++) {
      double squaredSiemens = contact.re()[s] * contact.re()[s] + contact.im()[s] * contact.im()[s];
      if (squares[s] * squaredSiemens > mostAmps * mostAmps) {
        row = row == before ? before.clone() : row;
        row[s] = 1;
      }
    }
    fuses[fuse] = row == before ? before : rows.shared(row);
  }

  byte[] loadsOf(int sample) {
    byte[] levels = new byte[loads.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = loads[i][sample];
    }
    return levels;
  }

  boolean[] fusesOf(int sample) {
    boolean[] over = new boolean[fuses.length];
    for (int i = 0; i < over.length; i++) {
      over[i] = fuses[i][sample] == 1;
    }
    return over;
  }

  /** Groups samples whose loads and fuses are all alike. */
  List<int[]> split(int[] samples) {
    List<int[]> groups = List.of(samples);
    for (byte[] row : loads) {
      groups = split(groups, row);
    }
    for (byte[] row : fuses) {
      groups = split(groups, row);
    }
    return groups;
  }

  private List<int[]> split(List<int[]> groups, byte[] row) {
    if (rows.isUniform(row) || groups.stream().allMatch(group -> uniform(group, row))) {
      return groups;
    }
    var finer = new ArrayList<int[]>();
    for (int[] group : groups) {
      var byLevel = new HashMap<Byte, List<Integer>>();
      for (int sample : group) {
        byLevel.computeIfAbsent(row[sample], level -> new ArrayList<>()).add(sample);
      }
      byLevel.values().forEach(part -> finer.add(part.stream().mapToInt(Integer::intValue).toArray()));
    }
    return finer;
  }

  private static boolean uniform(int[] group, byte[] row) {
    byte first = row[group[0]];
    for (int sample : group) {
      if (row[sample] != first) {
        return false;
      }
    }
    return true;
  }
}
