package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.CircuitFacts;
import rungbook.pack.Pack;
import rungbook.source.Source;
import rungbook.tree.Target;

/**
 * A damaged fragment is an error of its own and of the trees that take it in; the other trees stay sound and become
 * packs.
 */
class BrokenFragmentTest {

  private static final String PATH = "shared/fragments/open-furnace-live.md";

  /** Trees that do not take the fragment in: two stand for all of them. */
  private static final List<String> OTHERS = List.of("heat-pump-warm-air-in-cooling", "outdoor-unit-does-not-stop");

  private static boolean takes(String id) {
    String text = StarterLibrary.TEXT.in("trees/").get(id).text();
    return text.contains("fragment: open furnace live") || text.contains("fragment: open-furnace-live");
  }

  private static Library with(String fragment) {
    LibraryText text = StarterLibrary.with(PATH, fragment);
    Library library = StarterLibrary.readShared(text);
    return library.with(text, LibraryCompiler.trees(library, id -> takes(id) || OTHERS.contains(id)).toList());
  }

  private static String text() {
    return StarterLibrary.TEXT.texts().get(PATH).text();
  }

  private static void othersStaySoundAndBecomePacks(Library library) {
    PackInput material = new PackInput(library.shared(), library.text().pictures());
    assertTrue(library.trees().stream().anyMatch(tree -> !tree.isSound()));
    OTHERS.stream().map(id -> library.tree(id).orElseThrow()).forEach(tree -> {
      assertTrue(tree.isSound(), tree.path());
      assertTrue(Pack.of(tree.tree(), CircuitFacts.unknown(), material, Edition.draft()).bytes().length > 0);
    });
  }

  @Test
  void aStrayFenceIsReportedWhereItIsAndWhereItIsTakenIn() {
    Library library = with(text().replaceFirst("\n## ", "\n~~~\n## "));
    Set<String> files = library.found().shown().stream()
        .filter(problem -> problem.code().name().equals("fragment-without-step"))
        .map(problem -> problem.source().name()).collect(Collectors.toSet());
    Set<String> takers = StarterLibrary.TEXT.in("trees/").keySet().stream().filter(BrokenFragmentTest::takes)
        .map(id -> "trees/" + id + ".md").collect(Collectors.toSet());
    takers.add(PATH);
    assertEquals(takers, files);
    othersStaySoundAndBecomePacks(library);
  }

  @Test
  void openFrontMatterAndAMissingTitleKeepTheTreesFromBeingSound() {
    othersStaySoundAndBecomePacks(with(text().replaceFirst("(?s)^---\n(.*?)\n---\n", "---\n$1\n")));
    othersStaySoundAndBecomePacks(with(text().replaceFirst("title: .*\n", "")));
  }

  @Test
  void noSoundTreeHasAWayThatLeadsNowhere() {
    with(text().replace("```exit", "```")).trees().stream().filter(CompiledTree::isSound)
        .forEach(tree -> assertTrue(tree.tree().steps().stream().flatMap(step -> step.ways().stream())
            .noneMatch(way -> way.target() instanceof Target.Nowhere)));
  }
}
