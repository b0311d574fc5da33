package rungbook.text;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How fast this machine is now. A limit of processor time is meant for the machine of {@code docs/figures.md}; a slower
 * one, or one whose cores are busy with something else, gets more in proportion. A fixed piece of work is the measure.
 */
public final class ProcessorSpeed {

  /** What the work takes on the machine of {@code docs/figures.md} with the quick compiler only. */
  private static final double REFERENCE_MILLIS = 18;

  private static final double SLOWER = Math.max(1, bestOfFiveMillis() / REFERENCE_MILLIS);

  private ProcessorSpeed() {}

  /**
   * @param millis of processor time on the reference machine
   * @return as much work here, in milliseconds of processor time
   */
  public static long limitMillis(long millis) {
    return Math.round(millis * SLOWER);
  }

  private static double bestOfFiveMillis() {
    return IntStream.range(0, 5).mapToLong(i -> nanosOfWork()).min().orElseThrow() / 1e6;
  }

  private static long nanosOfWork() {
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    Map<String, Integer> counts = new HashMap<>();
    for (int i = 0; i < 100_000; i++) {
      counts.merge("word " + i * 31 % 20_011, 1, Integer::sum);
    }
    List<String> words = new ArrayList<>(counts.keySet());
    words.sort(null);
    long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    if (words.size() > 20_011) {
      throw new IllegalStateException("more words than there are remainders");
    }
    return end - start;
  }
}
