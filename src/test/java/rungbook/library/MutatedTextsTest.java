package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.library.WholeWay.Done;
import rungbook.source.Source;
import rungbook.text.ProcessorSpeed;

/**
 * Damaged texts of the starter library on the whole way, some with a proof: nothing throws, none takes a second of
 * processor time, and nothing is kept of them. Only a long run also looks at the heap, since others run beside a short
 * one. {@code -Drungbook.fuzz.texts=100000} makes it a long one, {@code -Drungbook.fuzz.seed=500001} starts elsewhere,
 * {@code -Drungbook.fuzz.proof-every=1} proves all of them.
 */
@Tag("slow")
class MutatedTextsTest {

  private static final int TEXTS = Integer.getInteger("rungbook.fuzz.texts", 100);
  private static final long SEED = Long.getLong("rungbook.fuzz.seed", 1);
  private static final int PROOF_EVERY = Integer.getInteger("rungbook.fuzz.proof-every", 10);
  private static final long MOST_MILLIS = ProcessorSpeed.limitMillis(1_000);
  /**
   * Where the text of a system has changed, its circuit is solved anew with every variant, and what the tree hands on
   * is followed through other trees, here without the faster compiler.
   */
  private static final long MOST_PROOF_MILLIS = ProcessorSpeed.limitMillis(5_000);
  private static final int WARM_UP = Math.min(60, TEXTS / 3);
  private static final boolean LONG = TEXTS >= 1_000;
  private static final int HEAP_LOOKS = LONG ? 10 : 1;
  private static final long MOST_KEPT_BYTES = 48L << 20;

  /** The systems whose circuits a prover keeps, and what a frame of the interpreter may still hold. */
  private static final int MOST_KEPT_TEXTS = 10;

  private static final List<String> PATHS = List.copyOf(StarterLibrary.TEXT.texts().keySet());

  private final List<WeakReference<Source>> taken = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private int packs;
  private int proofs;
  private long longestMillis;
  private long longestProofMillis;

  @Test
  void neverThrowNeverTakeLongAndLeaveNothingBehind() {
    try {
      go(SEED, WARM_UP);
      faults.removeIf(fault -> fault.endsWith(" ms"));
      longestMillis = 0;
      longestProofMillis = 0;
      var heap = new ArrayList<Long>();
      for (int look = 0; look < HEAP_LOOKS; look++) {
        heap.add(liveBytes());
        long from = (long) TEXTS * look / HEAP_LOOKS;
        long end = (long) TEXTS * (look + 1) / HEAP_LOOKS;
        go(SEED + WARM_UP + from, end - from);
      }
      heap.add(liveBytes());
      System.err.println(TEXTS + " texts from seed " + SEED + ": " + packs + " packs, " + proofs
          + " proofs, the longest took " + longestMillis + " ms, the longest proof " + longestProofMillis
          + " ms, live heap in MB "
          + heap.stream().map(bytes -> bytes >> 20).toList());
      assertTrue(!LONG || heap.get(HEAP_LOOKS) - heap.get(0) < MOST_KEPT_BYTES, heap::toString);
      long kept = taken.stream().filter(text -> text.get() != null).count();
      assertTrue(kept <= MOST_KEPT_TEXTS, () -> kept + " texts are kept");
    } finally {
      assertEquals(List.of(), faults);
    }
    assertTrue(packs > 0 && proofs > 0, "some texts stay sound");
  }

  private void go(long first, long texts) {
    for (long seed = first; seed < first + texts; seed++) {
      String path = PATHS.get(new Random(seed).nextInt(PATHS.size()));
      try {
        WholeWay way = WholeWay.of(path, Mutations.of(seed, path, StarterLibrary.TEXT));
        Done done = (seed % PROOF_EVERY == 0 ? way.proved() : way).go();
        for (String fault : done.unfit()) {
          faults.add("seed " + seed + ", " + path + ": " + fault);
        }
        if (done.millis() > MOST_MILLIS || done.proofMillis() > MOST_PROOF_MILLIS) {
          faults.add("seed " + seed + ", " + path + ": " + done.millis() + " ms, proof " + done.proofMillis() + " ms");
        }
        taken.add(new WeakReference<>(done.source()));
        packs += done.packs();
        proofs += done.proofs();
        longestMillis = Math.max(longestMillis, done.millis());
        longestProofMillis = Math.max(longestProofMillis, done.proofMillis());
      } catch (RuntimeException | StackOverflowError failed) {
        note(seed, path, failed);
      }
    }
  }

  private void note(long seed, String path, Throwable failed) {
    faults.add("seed " + seed + ", " + path + ": " + failed);
    failed.printStackTrace();
  }

  private static long liveBytes() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
