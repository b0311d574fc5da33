package rungbook.web.service;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import rungbook.circuit.network.Samples;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.Prover;
import rungbook.proof.Proving;
import rungbook.web.http.ProblemException;

/**
 * Where trees are proved: one at a time, however many ask, so that reading and writing stay quick. Who waits too long
 * is told
 * so; what was solved by then is kept. A text that was typed on is not proved any more.
 */
@ApplicationScoped
public class ProofService {
  private static final Duration LONGEST = Duration.ofSeconds(20);
  private static final int MOST_WAITING = 16;
  private static final int MOST_KEPT = 32;
  private final CompiledLibrary shelf;
  private final Prover prover = new Prover(Samples.USUAL);
  private final ThreadPoolExecutor bench = new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS,
      new ArrayBlockingQueue<>(MOST_WAITING), ProofService::thread);
  private final Map<String, Future<?>> typed = new ConcurrentHashMap<>();
  private final Map<String, Kept> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
      return size() > MOST_KEPT;
    }
  };

  private record Kept(Library library, Proving.Result result) {}

  ProofService(CompiledLibrary shelf) {
    this.shelf = shelf;
  }

  private static Thread thread(Runnable proof) {
    var thread = new Thread(proof, "proof");
    thread.setDaemon(true);
    return thread;
  }

  @PreDestroy
  void close() {
    bench.shutdownNow();
  }

  /** A tree as saved; proved once for as long as nothing in the library changes. */
  public Proving.Result saved(CompiledTree tree) {
    var library = shelf.library();
    return known(tree.path(), library).orElseGet(() -> {
      var result = await(submit(tree, library));
      synchronized (kept) {
        kept.put(tree.path(), new Kept(library, result));
      }
      return result;
    });
  }

  private Optional<Proving.Result> known(String path, Library library) {
    synchronized (kept) {
      return Optional.ofNullable(kept.get(path)).filter(found -> found.library() == library).map(Kept::result);
    }
  }

  /** A tree as somebody types it; a newer text of the same tree takes its place. */
  public Proving.Result typed(CompiledTree tree) {
    var proof = submit(tree, shelf.library());
    var older = typed.put(tree.path(), proof);
    if (older != null) {
      older.cancel(false);
    }
    try {
      return await(proof);
    } finally {
      typed.remove(tree.path(), proof);
    }
  }

  private Future<Proving.Result> submit(CompiledTree tree, Library library) {
    try {
      bench.purge();
      return bench
          .submit(() -> prover.prove(tree.tree(), library.text(), id -> library.tree(id).map(CompiledTree::tree)));
    } catch (RejectedExecutionException full) {
      throw ProblemException.of(503, "Too many proofs at once", MOST_WAITING + " others wait to be proved",
          "try again in a moment");
    }
  }

  private static Proving.Result await(Future<Proving.Result> proof) {
    try {
      return proof.get(LONGEST.toSeconds(), TimeUnit.SECONDS);
    } catch (TimeoutException late) {
      proof.cancel(false);
      throw ProblemException.of(503, "Not proved in time",
          "the proof takes longer than " + LONGEST.toSeconds() + " seconds",
          "try again in a moment: what is solved by then is kept");
    } catch (CancellationException overtaken) {
      throw ProblemException.of(409, "Overtaken", "a newer text of this tree is being proved",
          "ask again with the newest text");
    } catch (ExecutionException failed) {
      throw new IllegalStateException("the proof failed", failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw ProblemException.of(503, "Rungbook is stopping", "the proof was given up", "start it again");
    }
  }
}
