package rungbook.library;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Stream;
import rungbook.circuit.network.Samples;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Vocabulary;
import rungbook.tree.Tree;

/**
 * Proves trees on the systems of a library. What was solved of a system is kept for as long as its text stays the same,
 * so the second proof of a tree costs little; of many systems those last used are kept. Threads may share one.
 */
public final class Prover {

  static final Code PROOF_FAILED = Code.of("proof-failed");

  private static final int MOST_KEPT = 8;

  private final int drawn;
  private final Budget budget;
  private final Map<String, PreparedSystem> systems = new LinkedHashMap<>(16, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, PreparedSystem> eldest) {
      return size() > MOST_KEPT;
    }
  };

  /** @param drawn how many installations are drawn at random, {@link Samples#USUAL} as a rule */
  public Prover(int drawn) {
    this(drawn, Budget.inForce());
  }

  /** @param budget how much work a proof may be */
  public Prover(int drawn, Budget budget) {
    this.drawn = drawn;
    this.budget = budget;
  }

  /**
   * Whatever is wrong with a tree is its own result and nobody else's. The thread may be interrupted to give up.
   *
   * @param others the other trees of the library, by id
   * @throws CancellationException if it was given up
   */
  public Proving.Result prove(Tree tree, LibraryText text, Function<String, Optional<Tree>> others) {
    try {
      return proveOnItsSystem(tree, text, others);
    } catch (CancellationException givenUp) {
      throw givenUp;
    } catch (RuntimeException | StackOverflowError failed) {
      return failed(tree, failed);
    }
  }

  private Proving.Result proveOnItsSystem(Tree tree, LibraryText text, Function<String, Optional<Tree>> others) {
    Optional<String> id = tree.system().map(Vocabulary::id);
    Optional<Source> source = id.map(text.in("shared/systems/")::get);
    if (source.isEmpty()) {
      return Proving.withoutSystem(tree);
    }
    PreparedSystem system = system(id.get(), source.get());
    PreparedSystem.Circuit circuit = system.circuit();
    return circuit.installations().map(built -> Proving.prove(tree, built, system.walks(), others, budget))
        .orElseGet(() -> Proving.unproved(tree, circuit.why()));
  }

  /** Systems are built apart from each other, so that one that takes long holds up only those who need it. */
  private synchronized PreparedSystem system(String id, Source source) {
    PreparedSystem known = systems.get(id);
    if (known == null || !known.source().text().equals(source.text())) {
      known = new PreparedSystem(id, source, drawn, budget);
      systems.put(id, known);
    }
    return known;
  }

  private static Proving.Result failed(Tree tree, Throwable failed) {
    String place = Stream.of(failed.getStackTrace()).filter(frame -> frame.getClassName().startsWith("rungbook."))
        .findFirst()
        .map(frame -> " in " + frame.getFileName() + ", line " + frame.getLineNumber()).orElse("");
    Span title = tree.document().front("title").map(entry -> entry.valueSpan()).orElse(Span.at(0));
    return new Proving.Result.Unproved(Problem.at(PROOF_FAILED, tree.source(), title)
        .with("why", failed.getClass().getSimpleName() + place));
  }
}
