package rungbook.library.card;

import java.util.List;
import java.util.Optional;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.solving.SolvableSystem;
import rungbook.markdown.DocumentReader;
import rungbook.pack.PackFile;
import rungbook.pack.card.CardInput;
import rungbook.pack.card.CardPage;
import rungbook.proof.demand.ExpectedReadings;
import rungbook.proof.plan.Budget;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.tree.Shared;
import rungbook.tree.Tree;

/** Makes the pocket card of a system. */
public final class CardPages {

  private CardPages() {}

  /** Empty if the library does not have the system, or its circuit cannot be solved. */
  public static Optional<PackFile> of(String id, Library library) {
    Source source = library.text().in("shared/systems/").get(id);
    if (source == null) {
      return Optional.empty();
    }
    List<Tree> own = library.trees().stream().filter(CompiledTree::isSound).map(CompiledTree::tree)
        .filter(tree -> tree.system().filter(system -> system.id().equals(id)).isPresent()).toList();
    return SolvableSystem.of(id, DocumentReader.read(source), Budget.inForce()).systems()
        .map(systems -> card(id, systems.base(), own, library.shared()));
  }

  private static PackFile card(String id, ControlSystem system, List<Tree> trees, Shared shared) {
    return CardPage.of(new CardInput(id, system, ExpectedReadings.of(system, trees, shared.usualMeter())));
  }
}
