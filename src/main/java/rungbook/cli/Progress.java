package rungbook.cli;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import rungbook.report.Digits;

/** A progress line on the error stream during long work; removed when the work is done. */
final class Progress implements AutoCloseable {

  /** Shorter work shows no progress. */
  private static final long PATIENCE_NANOS = TimeUnit.MILLISECONDS.toNanos(700);

  private static final long EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(100);
  private static final String ERASE_LINE = "\r\u001B[K";

  private final Console terminal;
  private final int of;
  private final AtomicInteger done = new AtomicInteger();
  private long nextNanos = System.nanoTime() + PATIENCE_NANOS;
  private boolean shown;

  private Progress(Console terminal, int of) {
    this.terminal = terminal;
    this.of = of;
  }

  static Progress of(int files, Console terminal) {
    return new Progress(terminal, files);
  }

  /** Counts one more item as done. Thread-safe. */
  void step() {
    int now = done.incrementAndGet();
    if (terminal.watched()) {
      show(now);
    }
  }

  private synchronized void show(int now) {
    if (System.nanoTime() - nextNanos >= 0) {
      nextNanos = System.nanoTime() + EVERY_NANOS;
      shown = true;
      terminal.err().print(
          ERASE_LINE + "checking: " + Digits.grouped(Math.min(now, of)) + " of " + Digits.grouped(of) + " files");
      terminal.err().flush();
    }
  }

  @Override
  public void close() {
    if (shown) {
      terminal.err().print(ERASE_LINE);
      terminal.err().flush();
    }
  }
}
