package rungbook.library.solving;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import rungbook.circuit.network.Samples;
import rungbook.library.LibraryText;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.MixedInstallations;
import rungbook.proof.plan.OtherTrees;
import rungbook.proof.plan.Restorable;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.tree.Tree;

/**
 * Proves trees on the systems of a library. Keeps the solved circuits of the most recently used systems until their
 * text changes, so a second proof is fast. Thread-safe.
 */
public final class Prover {

  static final Code PROOF_FAILED = Code.of("proof-failed");

  private final Budget budget;
  private final PreparedSystems systems;
  private final KeptReadings kept;
  private final Map<Source, Installations> used = new HashMap<>();

  /** The solved states of systems, kept from run to run. */
  public interface KeptReadings {

    KeptReadings NOTHING = new KeptReadings() {
      @Override
      public Optional<byte[]> load(Source system) {
        return Optional.empty();
      }

      @Override
      public void save(Source system, byte[] archive) {
        // there is nowhere to keep them
      }
    };

    Optional<byte[]> load(Source system);

    void save(Source system, byte[] archive);
  }

  /** @param drawn the number of random installations, usually {@link Samples#USUAL} */
  public Prover(int drawn) {
    this(drawn, Budget.inForce());
  }

  /** @param kept what earlier runs have solved */
  public Prover(int drawn, KeptReadings kept) {
    this(drawn, Budget.inForce(), kept);
  }

  /** @param budget the most work for one proof */
  public Prover(int drawn, Budget budget) {
    this(drawn, budget, KeptReadings.NOTHING);
  }

  private Prover(int drawn, Budget budget, KeptReadings kept) {
    this.budget = budget;
    this.kept = kept;
    this.systems = new PreparedSystems(
        new PreparedSystem.Making(system -> MixedInstallations.of(system, drawn), budget, kept::load));
  }

  /**
   * A tree that cannot be proved is a result, not an exception. Interrupt the thread to cancel.
   *
   * @param others the other trees of the library, by id
   * @throws CancellationException if the thread was interrupted
   */
  public Proving.Result prove(Tree tree, LibraryText text, OtherTrees others) {
    try {
      return proveOnItsSystem(tree, text, others);
    } catch (CancellationException givenUp) {
      throw givenUp;
    } catch (RuntimeException | StackOverflowError failed) {
      return failed(tree, failed);
    }
  }

  private Proving.Result proveOnItsSystem(Tree tree, LibraryText text, OtherTrees others) {
    Optional<PreparedSystem> known = systems.of(tree, text);
    if (known.isEmpty()) {
      return Proving.withoutSystem(tree);
    }
    PreparedSystem system = known.get();
    PreparedSystem.Circuit circuit = system.circuit();
    circuit.installations().ifPresent(built -> use(system.source(), built));
    return circuit.installations().map(built -> built.without(tree.notForKeys()))
        .map(built -> Proving.prove(tree, built, system.walkTimes(), others, budget))
        .orElseGet(() -> Proving.unproved(tree, circuit.why()));
  }

  private synchronized void use(Source system, Installations built) {
    if (kept != KeptReadings.NOTHING) {
      used.put(system, built);
    }
  }

  /** Keeps what was solved for later runs. */
  public synchronized void keepReadings() {
    used.forEach((system, built) -> {
      if (built instanceof Restorable changed && changed.isChanged()) {
        kept.save(system, changed.archive());
      }
    });
  }

  /**
   * What the circuit shows to be wrong with the systems of these trees, each system once. It costs as much as a proof,
   * so proofs of drafts leave it out.
   */
  public List<Problem> systemProblems(Collection<Tree> trees, LibraryText text) {
    Map<String, Tree> bySystem = new LinkedHashMap<>();
    trees.forEach(tree -> tree.system().ifPresent(words -> bySystem.putIfAbsent(words.id(), tree)));
    return bySystem.entrySet().stream().flatMap(one -> systemProblems(one.getKey(), one.getValue(), text).stream())
        .toList();
  }

  private List<Problem> systemProblems(String id, Tree tree, LibraryText text) {
    try {
      return systems.of(id, text).map(PreparedSystem::problems).orElse(List.of());
    } catch (CancellationException givenUp) {
      throw givenUp;
    } catch (RuntimeException | StackOverflowError failed) {
      return failed(tree, failed).problems();
    }
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
