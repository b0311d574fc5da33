package rungbook.circuit;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The readings of one circuit state for every probe and sample, and for every case that was solved. Case 0 is the
 * healthy system, case i + 1 is the system's fault i.
 */
public final class ReadingTable {

  private final List<Probe> probes;
  private final List<String> sights;
  private final List<BlockTable> blocks;
  private final int samples;

  /** @param blocks in the order of their samples */
  ReadingTable(List<Probe> probes, List<String> sights, List<BlockTable> blocks) {
    this.probes = List.copyOf(probes);
    this.sights = sights;
    this.blocks = List.copyOf(blocks);
    samples = blocks.stream().mapToInt(BlockTable::samples).sum();
  }

  /** A table of which no case is solved yet. */
  public static ReadingTable empty(List<Probe> probes, List<String> sights, int cases, int samples) {
    return new ReadingTable(probes, sights, IntStream.of(Dictionary.blockSizes(samples))
        .mapToObj(size -> new BlockTable(size, cases, probes.size(), sights.size())).toList());
  }

  public int samples() {
    return samples;
  }

  public List<Probe> probes() {
    return probes;
  }

  BlockTable block(int number) {
    return blocks.get(number);
  }

  /** Its parts, in the order of their samples. */
  public List<BlockTable> blocks() {
    return blocks;
  }

  /** The reading of a probe by its index in {@link #probes}, coded as in {@link Reading}. */
  public double reading(int caseNumber, int sample, int probe) {
    int first = 0;
    for (BlockTable block : blocks) {
      if (sample < first + block.samples()) {
        return block.readings(caseNumber, probe)[sample - first];
      }
      first += block.samples();
    }
    throw new IndexOutOfBoundsException(sample);
  }

  /** Copies the readings of a case at a probe, a sample after the other. */
  public void readings(int caseNumber, int probe, double[] into) {
    int first = 0;
    for (BlockTable block : blocks) {
      System.arraycopy(block.readings(caseNumber, probe), 0, into, first, block.samples());
      first += block.samples();
    }
  }

  /** The keys of the sights that {@link #seen} knows. */
  public List<String> sights() {
    return sights;
  }

  /** @param bit the index of the sight in {@link #sights} */
  public boolean seen(int caseNumber, int sample, int bit) {
    int first = 0;
    for (BlockTable block : blocks) {
      if (sample < first + block.samples()) {
        return block.seen(caseNumber, sample - first, bit);
      }
      first += block.samples();
    }
    throw new IndexOutOfBoundsException(sample);
  }

  /** Copies what is seen in a case, a sample after the other; nothing of a sight that only another variant has. */
  public void seen(int caseNumber, String sight, boolean[] into) {
    int bit = sights.indexOf(sight);
    int next = 0;
    for (BlockTable block : blocks) {
      for (int sample = 0; sample < block.samples(); sample++) {
        into[next++] = bit >= 0 && block.seen(caseNumber, sample, bit);
      }
    }
  }
}
