package rungbook.circuit;

import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The readings of one circuit state on the samples of one block. A row of readings is shared by all that settle in the
 * same network; a row is null until its case is solved.
 */
public final class BlockTable {

  private final int samples;
  private final int probes;
  private final int words;
  private final double[] @Nullable [] readings;
  private final long[] @Nullable [] seen;

  BlockTable(int samples, int cases, int probes, int sights) {
    this.samples = samples;
    this.probes = probes;
    words = (sights + Long.SIZE - 1) / Long.SIZE;
    readings = new double[cases * probes][];
    seen = new long[cases][];
  }

  public int samples() {
    return samples;
  }

  /** The readings of a case at a probe, a sample after the other; callers must not modify them. */
  public double[] readings(int caseNumber, int probe) {
    return Objects.requireNonNull(readings[caseNumber * probes + probe], "the case is not solved");
  }

  /** What is seen in a case: for each sample a bit for each sight; callers must not modify it. */
  public long[] seen(int caseNumber) {
    return Objects.requireNonNull(seen[caseNumber], "the case is not solved");
  }

  /**
   * Takes over a case that was solved before.
   *
   * @param rows as {@link #readings} gave them, by probe
   * @param sights as {@link #seen(int)} gave it
   */
  public void restore(int caseNumber, List<double[]> rows, long[] sights) {
    if (rows.size() != probes || sights.length != samples * words
        || rows.stream().anyMatch(row -> row.length != samples)) {
      throw new IllegalArgumentException("the rows are of another table");
    }
    for (int probe = 0; probe < probes; probe++) {
      readings[caseNumber * probes + probe] = rows.get(probe);
    }
    seen[caseNumber] = sights;
  }

  boolean seen(int caseNumber, int sample, int sight) {
    return (seen(caseNumber)[sample * words + sight / Long.SIZE] >>> sight & 1) == 1;
  }

  /**
   * Records readings of some samples.
   *
   * @param which indices in the block
   * @param values of all samples, which must not change afterward
   */
  void write(int caseNumber, int probe, int[] which, double[] values) {
    int row = caseNumber * probes + probe;
    if (which.length == samples) {
      readings[row] = values;
      return;
    }
    double[] own = readings[row];
    if (own == null) {
      own = new double[samples];
      readings[row] = own;
    }
    for (int sample : which) {
      own[sample] = values[sample];
    }
  }

  /**
   * Records what is seen in some samples.
   *
   * @param seenHere a bit for each sight
   */
  void write(int caseNumber, int[] which, BitSet seenHere) {
    long[] own = seen[caseNumber];
    if (own == null) {
      own = new long[samples * words];
      seen[caseNumber] = own;
    }
    long[] bits = seenHere.toLongArray();
    for (int sample : which) {
      System.arraycopy(bits, 0, own, sample * words, bits.length);
    }
  }
}
