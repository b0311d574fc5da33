package rungbook.web.service;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Samples;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.Silencing;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.proof.advice.Advice;
import rungbook.proof.advice.TreeState;
import rungbook.web.http.Asker;
import rungbook.web.http.ProblemException;
import rungbook.web.job.Job;
import rungbook.web.job.RoundRobinExecutor;

/**
 * Proves trees. Saved trees and drafts have workers of their own, and authors take turns. A proof is stopped when
 * nobody waits for it, when its author sends a newer draft, or when it runs too long. Threads may share it.
 */
@ApplicationScoped
public class ProofService {

  static final String SAVED_SETTING = "rungbook.proof.saved-seconds";
  static final String DRAFT_SETTING = "rungbook.proof.draft-seconds";
  private static final int MOST_FINISHED = 128;
  // no author and no tree is called like this
  private static final String AHEAD = "a page that shows many trees";
  private final Supplier<Library> library;
  private final Method method;
  private final ProofSettings settings;
  private final RoundRobinExecutor<Proving.Result> savedQueue;
  private final RoundRobinExecutor<Proving.Result> draftQueue;
  private final Map<DraftKey, Job<Proving.Result>> drafts = new ConcurrentHashMap<>();
  private final Map<String, SavedProof> proving = new HashMap<>();
  private final Map<String, FinishedProof> finished = new LinkedHashMap<>(MOST_FINISHED, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, FinishedProof> eldest) {
      return size() > MOST_FINISHED;
    }
  };

  /** Of every tree that was proved since {@code statesOf} became the library; guarded by {@code finished}. */
  private final Map<String, TreeState> states = new HashMap<>();
  private @Nullable Library statesOf;

  /** How a tree is proved. Interrupting its thread makes it throw a {@link CancellationException} soon after. */
  @FunctionalInterface
  interface Method {
    Proving.Result prove(CompiledTree tree, Library library);
  }

  private record DraftKey(String author, String path) {}

  private record SavedProof(Library library, Job<Proving.Result> job) {}

  private record FinishedProof(Library library, Proving.Result result) {}

  @Inject
  ProofService(CompiledLibrary compiled, ProofSettings settings) {
    this(compiled::current, provenBy(new Prover(Samples.USUAL)), settings);
  }

  ProofService(Supplier<Library> library, Method method, ProofSettings settings) {
    this.library = library;
    this.method = method;
    this.settings = settings;
    savedQueue = new RoundRobinExecutor<>("proof", settings.savedWorkers(), settings.savedLimit());
    draftQueue = new RoundRobinExecutor<>("draft proof", settings.draftWorkers(), settings.draftLimit());
  }

  static Method provenBy(Prover prover) {
    return (tree, library) -> prover.prove(tree.tree(), library.text(),
        id -> library.tree(id).map(CompiledTree::tree));
  }

  @PreDestroy
  void close() {
    savedQueue.close();
    draftQueue.close();
  }

  /** How many proofs wait or run. */
  int load() {
    return savedQueue.load() + draftQueue.load();
  }

  /** Proves a tree as saved, once for as long as nothing in the library changes and for all who ask meanwhile. */
  public Proving.Result saved(CompiledTree tree, Library now, Asker asker) {
    return saved(tree.path(), tree, now, asker, settings.patience());
  }

  /**
   * Proves an earlier revision of a tree in the library of today, in the same way.
   *
   * @param patience how long the asker waits
   */
  Proving.Result earlier(CompiledTree tree, int revision, Library now, Asker asker, Duration patience) {
    var least = patience.compareTo(settings.patience()) < 0 ? patience : settings.patience();
    return saved(tree.path() + " revision " + revision, tree, now, asker, least);
  }

  /** @param key of the text among those of this library */
  private Proving.Result saved(String key, CompiledTree tree, Library now, Asker asker, Duration patience) {
    var known = known(key, now);
    if (known.isPresent()) {
      return known.get();
    }
    var job = joinOrSubmit(key, tree, now, asker);
    asker.whenGone().accept(job::leave);
    try {
      return await(job, savedQueue, SAVED_SETTING, patience);
    } catch (TimeoutException late) {
      throw ProofProblems.stillProving(patience);
    }
  }

  /**
   * Proves a saved tree for a page that shows many, in a turn of its own beside what people wait for. Nobody's leaving
   * stops it.
   *
   * @param whenDone takes the result; empty if the proof was stopped
   * @throws ProblemException if too many proofs wait
   */
  @SuppressWarnings("FutureReturnValueIgnored") // whenDone is told in any case
  void ahead(CompiledTree tree, Library now, Consumer<Optional<Proving.Result>> whenDone) {
    var result = new AtomicReference<Proving.Result>();
    submit(savedQueue, AHEAD, () -> {
      var proved = keep(tree.path(), tree, now);
      result.set(proved);
      return proved;
    }, () -> whenDone.accept(Optional.ofNullable(result.get())));
  }

  /** The state of a tree, with its proof if it was proved since the library last changed; it starts no proof. */
  @SuppressWarnings("ReferenceEquality") // a library is replaced and never changed
  public TreeState state(CompiledTree tree, Library now) {
    synchronized (finished) {
      var known = statesOf == now ? states.get(tree.path()) : null;
      return known == null ? TreeState.of(tree.problems(), Optional.empty()) : known;
    }
  }

  private static TreeState state(CompiledTree tree, Proving.Result result) {
    return TreeState.of(tree.problems(),
        result.proved().map(proof -> Advice.of(proof, Silencing.ofProof(tree.tree(), result).shown())));
  }

  /** Compared by identity: a library is replaced and never changed. */
  @SuppressWarnings("ReferenceEquality")
  Optional<Proving.Result> known(String key, Library library) {
    synchronized (finished) {
      return Optional.ofNullable(finished.get(key)).filter(found -> found.library() == library)
          .map(FinishedProof::result);
    }
  }

  /** Compared by identity, as above. */
  @SuppressWarnings("ReferenceEquality")
  private Job<Proving.Result> joinOrSubmit(String key, CompiledTree tree, Library now, Asker asker) {
    synchronized (proving) {
      var found = proving.get(key);
      if (found != null && found.library() == now && found.job().join()) {
        return found.job();
      }
      var job = submit(savedQueue, owner(asker, tree), () -> keep(key, tree, now), this::forgetDone);
      proving.put(key, new SavedProof(now, job));
      return job;
    }
  }

  private void forgetDone() {
    synchronized (proving) {
      proving.values().removeIf(proof -> proof.job().isDone());
    }
  }

  private Proving.Result keep(String key, CompiledTree tree, Library now) {
    var result = method.prove(tree, now);
    var state = state(tree, result);
    synchronized (finished) {
      finished.put(key, new FinishedProof(now, result));
      keepState(key, state, now);
    }
    return result;
  }

  /** A state is small, so those of all trees are kept until the library changes. */
  @SuppressWarnings("ReferenceEquality") // as above
  private void keepState(String key, TreeState state, Library now) {
    if (statesOf != now) {
      states.clear();
      statesOf = now;
    }
    states.put(key, state);
  }

  /** Proves a tree as its author writes it; a newer draft of the same tree by the same author replaces it. */
  public Proving.Result draft(CompiledTree tree, Asker asker) {
    var key = new DraftKey(asker.author(), tree.path());
    replace(drafts.remove(key));
    var now = library.get();
    var job = submit(draftQueue, owner(asker, tree), () -> method.prove(tree, now), () -> {});
    replace(drafts.put(key, job));
    asker.whenGone().accept(job::leave);
    try {
      return await(job, draftQueue, DRAFT_SETTING, settings.patience());
    } catch (TimeoutException late) {
      job.leave();
      throw ProofProblems.othersFirst(settings.patience());
    } finally {
      drafts.remove(key, job);
    }
  }

  private static void replace(Job<Proving.Result> older) {
    if (older != null) {
      older.stop(Job.StopReason.REPLACED);
    }
  }

  /** Whose turn a proof takes: the author's, and the tree's where the author is unknown. */
  private static String owner(Asker asker, CompiledTree tree) {
    return asker.author().isEmpty() ? tree.path() : "author " + asker.author();
  }

  private static Job<Proving.Result> submit(RoundRobinExecutor<Proving.Result> queue, String owner,
      Supplier<Proving.Result> proof, Runnable whenDone) {
    try {
      return queue.submit(owner, proof::get, whenDone);
    } catch (RejectedExecutionException full) {
      throw ProofProblems.tooManyWait();
    }
  }

  private Proving.Result await(Job<Proving.Result> job, RoundRobinExecutor<Proving.Result> queue, String setting,
      Duration patience) throws TimeoutException {
    try {
      return job.get(patience.toMillis(), TimeUnit.MILLISECONDS);
    } catch (CancellationException stopped) {
      throw ProofProblems.stopped(job.stopReason(), queue.limit(), setting);
    } catch (ExecutionException failed) {
      throw failure(Objects.requireNonNullElse(failed.getCause(), failed), job, queue, setting);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw ProofProblems.serverStops();
    }
  }

  /** A proof whose thread was interrupted, but not by its job, ends with the proof's own exception. */
  private static RuntimeException failure(Throwable cause, Job<Proving.Result> job,
      RoundRobinExecutor<Proving.Result> queue, String setting) {
    return cause instanceof CancellationException ? ProofProblems.stopped(job.stopReason(), queue.limit(), setting)
        : new IllegalStateException("the proof failed", cause);
  }
}
