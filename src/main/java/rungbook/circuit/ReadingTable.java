package rungbook.circuit;

import java.util.BitSet;
import java.util.List;

/**
 * The readings of one circuit state for every case, probe and sample, in one array:
 * {@code readings[(case * probes + probe) * samples + sample]}. Case 0 is the healthy system, case i + 1 is the
 * system's fault i. Several threads may write at once, each its own samples.
 */
public final class ReadingTable {

  private final List<Probe> probes;
  private final List<String> sights;
  private final int samples;
  private final double[] readings;

  /** A bit for each sight; each case and sample has words of its own, so that no two threads share one. */
  private final long[] seen;

  private final int words;

  ReadingTable(List<Probe> probes, List<String> sights, int cases, int samples) {
    this.probes = List.copyOf(probes);
    this.sights = sights;
    this.samples = samples;
    words = (sights.size() + Long.SIZE - 1) / Long.SIZE;
    readings = new double[cases * probes.size() * samples];
    seen = new long[cases * samples * words];
  }

  public int samples() {
    return samples;
  }

  public List<Probe> probes() {
    return probes;
  }

  /** The reading of a probe by its index in {@link #probes}, coded as in {@link Reading}. */
  public double reading(int caseNumber, int sample, int probe) {
    return readings[index(caseNumber, sample, probe)];
  }

  /** The index in {@link #raw} of the first sample of one case at one probe; the other samples follow. */
  public int offset(int caseNumber, int probe) {
    return index(caseNumber, 0, probe);
  }

  /** All readings; callers must not modify the array. */
  public double[] raw() {
    return readings;
  }

  /** The keys of the sights that {@link #seen} knows. */
  public List<String> sights() {
    return sights;
  }

  /** @param bit the index of the sight in {@link #sights} */
  public boolean seen(int caseNumber, int sample, int bit) {
    return (seen[(caseNumber * samples + sample) * words + bit / Long.SIZE] >>> bit & 1) == 1;
  }

  private int index(int caseNumber, int sample, int probe) {
    return (caseNumber * probes.size() + probe) * samples + sample;
  }

  /**
   * Records readings of some samples of a block.
   *
   * @param first the first sample of the block
   * @param which indices in the block
   */
  void write(int caseNumber, int probe, int first, int[] which, double[] values) {
    int offset = offset(caseNumber, probe) + first;
    if (which.length == values.length) {
      System.arraycopy(values, 0, readings, offset, values.length);
      return;
    }
    for (int sample : which) {
      readings[offset + sample] = values[sample];
    }
  }

  /**
   * Records what is seen.
   *
   * @param seenHere a bit for each sight, by its index in {@link #sights}
   */
  void write(int caseNumber, int sample, BitSet seenHere) {
    long[] bits = seenHere.toLongArray();
    System.arraycopy(bits, 0, seen, (caseNumber * samples + sample) * words, bits.length);
  }
}
