package rungbook.circuit;

import java.util.BitSet;
import java.util.List;

/**
 * The readings of one circuit state for every case, probe and sample, in one array:
 * {@code readings[(case * probes + probe) * samples + sample]}. Case 0 is the healthy system, case i + 1 is the
 * system's fault i.
 */
public final class ReadingTable {

  private final List<Probe> probes;
  private final List<String> sights;
  private final int samples;
  private final double[] readings;
  private final BitSet seen = new BitSet();

  ReadingTable(List<Probe> probes, List<String> sights, int cases, int samples) {
    this.probes = List.copyOf(probes);
    this.sights = sights;
    this.samples = samples;
    readings = new double[cases * probes.size() * samples];
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

  public boolean seen(int caseNumber, int sample, String sight) {
    int bit = sights.indexOf(sight);
    if (bit < 0) {
      throw new IllegalArgumentException("the system shows no " + sight);
    }
    return seen.get(bit(caseNumber, sample, bit));
  }

  private int index(int caseNumber, int sample, int probe) {
    return (caseNumber * probes.size() + probe) * samples + sample;
  }

  void write(int caseNumber, int probe, int[] which, double[] values) {
    int offset = offset(caseNumber, probe);
    for (int sample : which) {
      readings[offset + sample] = values[sample];
    }
  }

  private int bit(int caseNumber, int sample, int sight) {
    return (caseNumber * samples + sample) * sights.size() + sight;
  }

  /**
   * Records what is seen.
   *
   * @param seenHere a bit for each sight, by its index in {@link #sights}
   */
  void write(int caseNumber, int sample, BitSet seenHere) {
    seenHere.stream().forEach(sight -> seen.set(bit(caseNumber, sample, sight)));
  }
}
