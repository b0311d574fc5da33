package rungbook.library.solving;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import rungbook.library.LibraryText;
import rungbook.proof.HighestVoltages;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.MixedInstallations;
import rungbook.tree.Tree;

/**
 * Finds the highest voltage at each check of a tree, for packs. Solves few installations, so it costs a small part of a
 * proof, and keeps the circuits of the most recently used systems. Thread-safe.
 */
public final class VoltageFinder {

  private final Budget budget = Budget.inForce();
  private final PreparedSystems systems = new PreparedSystems(
      new PreparedSystem.Making(MixedInstallations::atHighVoltage, budget, system -> Optional.empty()));

  /**
   * Nothing is known of a tree that cannot be proved; {@code prove} says why.
   *
   * @throws CancellationException if the thread was interrupted
   */
  public HighestVoltages of(Tree tree, LibraryText text) {
    try {
      return systems.of(tree, text)
          .flatMap(system -> system.circuit().installations()
              .map(installations -> installations.without(tree.notForKeys()))
              .map(installations -> HighestVoltages.of(tree, installations, system.walkTimes(), budget)))
          .orElse(HighestVoltages.unknown());
    } catch (CancellationException givenUp) {
      throw givenUp;
    } catch (RuntimeException | StackOverflowError failed) {
      return HighestVoltages.unknown();
    }
  }
}
