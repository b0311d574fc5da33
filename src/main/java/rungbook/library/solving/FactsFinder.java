package rungbook.library.solving;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import rungbook.library.LibraryText;
import rungbook.proof.CircuitFacts;
import rungbook.proof.HighestVoltages;
import rungbook.proof.Suspects;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.MixedInstallations;
import rungbook.tree.Tree;

/**
 * Finds what the circuit says of the steps of a tree, for packs. Solves few installations, so it costs a small part of
 * a proof, and keeps the circuits of the most recently used systems. Thread-safe.
 */
public final class FactsFinder {

  private final Budget budget = Budget.inForce();
  private final PreparedSystems systems = new PreparedSystems(
      new PreparedSystem.Making(MixedInstallations::few, budget, system -> Optional.empty()));

  /**
   * Nothing is known of a tree that cannot be proved; {@code prove} says why.
   *
   * @throws CancellationException if the thread was interrupted
   */
  public CircuitFacts of(Tree tree, LibraryText text) {
    try {
      return systems.of(tree, text).flatMap(system -> system.circuit().installations()
          .map(installations -> of(tree, installations.without(tree.notForKeys()), system)))
          .orElse(CircuitFacts.unknown());
    } catch (CancellationException givenUp) {
      throw givenUp;
    } catch (RuntimeException | StackOverflowError failed) {
      return CircuitFacts.unknown();
    }
  }

  private CircuitFacts of(Tree tree, Installations installations, PreparedSystem system) {
    return new CircuitFacts(HighestVoltages.of(tree, installations, system.walkTimes(), budget),
        Suspects.of(tree, installations, system.walkTimes(), budget));
  }
}
