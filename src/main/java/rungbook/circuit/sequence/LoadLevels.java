package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;

/** What every load gets and whether every fuse holds, for each sample. */
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

  /** @param share how much of its current the load gets for the voltage across it; null for all of it */
  void noteLoad(int load, ComplexRows volts, Branch link, double[] share, double[] onVolts, double[] offVolts,
      double humShare) {
    byte[] row = loads[load];
    double[] ar = volts.re[link.a()];
    double[] ai = volts.im[link.a()];
    double[] br = volts.re[link.b()];
    double[] bi = volts.im[link.b()];
    for (int s = 0; s < row.length; s++) {
      double re = ar[s] - br[s];
      double im = ai[s] - bi[s];
      double part = share == null ? 1 : share[s];
      double square = (re * re + im * im) * part * part;
      double on = onVolts[s];
      double off = offVolts[s];
      int level = square >= on * on ? 3 : square >= off * off ? 2 : square >= on * on * humShare * humShare ? 1 : 0;
      row[s] = (byte) Math.min(row[s], level);
    }
  }

  /**
   * @param contact the fuse as the fault leaves it: a bad connection in series takes most of the volts, not of the
   * amps
   */
  void noteFuse(int fuse, ComplexRows volts, RankOneUpdate contact, double mostAmps) {
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

  /** Parts samples that differ in anything. */
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
