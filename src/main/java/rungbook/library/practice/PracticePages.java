package rungbook.library.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.library.LibraryText;
import rungbook.library.solving.SolvableSystem;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.pack.practice.PracticeInput;
import rungbook.pack.practice.PracticePage;
import rungbook.proof.plan.Budget;
import rungbook.source.Source;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.system.reader.WalkTimesReader;
import rungbook.tree.Meter;
import rungbook.tree.Shared;
import rungbook.tree.Tree;

/** Makes a practice page for each system that some tree is for and whose circuit can be solved. */
public final class PracticePages {

  private PracticePages() {}

  /** @param trees without errors */
  public static List<PracticePage> of(List<Tree> trees, Shared shared, LibraryText text) {
    Map<String, List<Tree>> bySystem = trees.stream().filter(tree -> tree.system().isPresent())
        .collect(Collectors.groupingBy(tree -> tree.system().map(Vocabulary::id).orElseThrow()));
    return bySystem.entrySet().stream().sorted(Map.Entry.comparingByKey())
        .flatMap(system -> of(system.getKey(), system.getValue(), shared, text).stream()).toList();
  }

  /**
   * The page of one system; empty if the library does not have the system, or its circuit cannot be solved.
   *
   * @param trees of the system, without errors
   */
  public static Optional<PracticePage> of(String id, List<Tree> trees, Shared shared, LibraryText text) {
    Source source = text.in("shared/systems/").get(id);
    if (source == null) {
      return Optional.empty();
    }
    Document document = DocumentReader.read(source);
    WalkTimes walks = WalkTimesReader.read(document);
    return SolvableSystem.of(id, document, Budget.inForce()).systems()
        .filter(systems -> !systems.base().faults().isEmpty())
        .map(systems -> PracticePage.of(new PracticeInput(id, systems, walks, meters(shared), trees)));
  }

  private static List<Meter> meters(Shared shared) {
    return Stream.concat(Stream.of(shared.usualMeter()),
        shared.meters().values().stream().sorted(Comparator.comparing(Meter::id))).distinct().toList();
  }
}
