package rungbook.web.service;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.proof.Proving;
import rungbook.proof.coverage.TreeFindings;
import rungbook.web.http.ProblemException;

/**
 * Proves the trees of one library, one after the other, and keeps what its coverage needs of each. It goes on by itself
 * until all are done, nobody has asked for a while, or it is ended. Thread-safe.
 */
final class CoverageFilling {
  /** Long enough to come back after a break; short enough to stop the work that nobody wants any more. */
  private static final long ASKED_NANOS = TimeUnit.MINUTES.toNanos(30);
  private final ProofService proofs;
  private final Library library;
  private final Map<String, Optional<TreeFindings>> done = new HashMap<>();
  private final List<CompiledTree> stopped = new ArrayList<>();
  private final Deque<CompiledTree> left;
  private final CountDownLatch all = new CountDownLatch(1);
  private boolean isRunning;
  private boolean isEnded;
  private long askedNanos = System.nanoTime();

  /** @param library whose trees are all to be proved */
  CoverageFilling(ProofService proofs, Library library) {
    this.proofs = proofs;
    this.library = library;
    this.left = new ArrayDeque<>(library.trees());
  }

  Library library() {
    return library;
  }

  /** Somebody asks: starts the work, or goes on with it, and waits for it that long. */
  void ask(long waitMillis) throws InterruptedException {
    boolean isIdle;
    synchronized (this) {
      askedNanos = System.nanoTime();
      isIdle = !isRunning;
      isRunning = true;
    }
    if (isIdle) {
      proveNext();
    }
    all.await(waitMillis, TimeUnit.MILLISECONDS);
  }

  /** No further tree is proved. */
  synchronized void end() {
    isEnded = true;
  }

  private void proveNext() {
    Optional<CompiledTree> next = next();
    try {
      next.ifPresent(tree -> proofs.ahead(tree, library, result -> {
        keep(tree, result);
        proveNext();
      }));
    } catch (ProblemException tooManyWait) {
      pause(next.orElseThrow());
    }
  }

  /** The next tree that has to be proved; empty when the work ends or pauses. */
  private synchronized Optional<CompiledTree> next() {
    boolean isWanted = !isEnded && System.nanoTime() - askedNanos < ASKED_NANOS;
    while (isWanted && !left.isEmpty()) {
      CompiledTree tree = left.remove();
      Optional<Proving.Result> known = proofs.known(tree.path(), library);
      if (known.isEmpty()) {
        return Optional.of(tree);
      }
      keep(tree, known);
    }
    isRunning = false;
    if (left.isEmpty()) {
      all.countDown();
    }
    return Optional.empty();
  }

  private synchronized void pause(CompiledTree tree) {
    left.addFirst(tree);
    isRunning = false;
  }

  private synchronized void keep(CompiledTree tree, Optional<Proving.Result> result) {
    done.put(tree.path(), result.flatMap(Proving.Result::proved).map(TreeFindings::of));
    if (result.isEmpty()) {
      stopped.add(tree);
    }
  }

  /** What is known so far, in the order of the library. */
  synchronized CoverageService.Found found() {
    return new CoverageService.Found(
        library.trees().stream().flatMap(tree -> done.getOrDefault(tree.path(), Optional.empty()).stream()).toList(),
        stopped.stream().map(TreeEntry::of).toList(), done.size(), library.trees().size());
  }
}
