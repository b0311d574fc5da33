package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;

/** The voltage level of every load, [load][sample], and whether every fuse is overloaded, [fuse][sample]. */
final class LoadLevels {

  private final byte[][] loads;
  private final byte[][] fuses;

  LoadLevels(int loadCount, int fuseCount, int samples) {
    loads = new byte[loadCount][samples];
    for (byte[] row : loads) {
      Arrays.fill(row, (byte) 3);
    }
    fuses = new byte[fuseCount][samples];
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
    byte[] row = loads[load];
    double[] ar = volts.re[branch.a()];
    double[] ai = volts.im[branch.a()];
    double[] br = volts.re[branch.b()];
    double[] bi = volts.im[branch.b()];
    for (int s = 0; s < row.length; s++) {
      double re = ar[s] - br[s];
      double im = ai[s] - bi[s];
      double square = (re * re + im * im) * share[s] * share[s];
      double on = onVolts[s];
      double off = offVolts[s];
      int level = square >= on * on ? 3 : square >= off * off ? 2 : square >= on * on * humShare * humShare ? 1 : 0;
      row[s] = (byte) Math.min(row[s], level);
    }
  }

  /**
   * Marks the samples in which a fuse's current |V y| is more than {@code mostAmps}.
   *
   * @param contact the fuse's branch, with any resistance that a fault adds in series
   */
  void updateFuse(int fuse, ComplexRows volts, RankOneUpdate contact, double mostAmps) {
    for (int s = 0; s < fuses[fuse].length; s++) {
      double re = volts.re[contact.a()][s] - volts.re[contact.b()][s];
      double im = volts.im[contact.a()][s] - volts.im[contact.b()][s];
      double squaredSiemens = contact.re()[s] * contact.re()[s] + contact.im()[s] * contact.im()[s];
      if ((re * re + im * im) * squaredSiemens > mostAmps * mostAmps) {
        fuses[fuse][s] = 1;
      }
    }
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

  private static List<int[]> split(List<int[]> groups, byte[] row) {
    if (groups.stream().allMatch(group -> uniform(group, row))) {
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
