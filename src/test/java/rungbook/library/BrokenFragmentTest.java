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
import rungbook.proof.HighestVoltages;
import rungbook.pack.Pack;
import rungbook.source.Source;
import rungbook.tree.Target;

/**
 * A damaged fragment is an error of its own and of the trees that take it in; the other trees stay sound and become
 * packs.
 */
class BrokenFragmentTest {

  private static final String PATH = "shared/fragments/open-furnace-live.md";

  private static Library with(String fragment) {
    return LibraryCompiler.compile(StarterLibrary.with(PATH, fragment));
  }

  private static String text() {
    return StarterLibrary.TEXT.texts().get(PATH).text();
  }

  private static void everySoundTreeBecomesAPack(Library library) {
    PackInput material = new PackInput(library.shared(), library.text().pictures());
    List<CompiledTree> sound = library.trees().stream().filter(CompiledTree::isSound).toList();
    assertTrue(sound.size() < library.trees().size() && !sound.isEmpty(), sound.size() + " sound");
    sound.forEach(tree -> assertTrue(
        Pack.of(tree.tree(), HighestVoltages.unknown(), material, Edition.draft()).bytes().length > 0));
  }

  @Test
  void aStrayFenceIsReportedWhereItIsAndWhereItIsTakenIn() {
    Library library = with(text().replaceFirst("\n## ", "\n~~~\n## "));
    Set<String> files = library.found().shown().stream()
        .filter(problem -> problem.code().name().equals("fragment-without-step"))
        .map(problem -> problem.source().name()).collect(Collectors.toSet());
    Set<String> takers = StarterLibrary.TEXT.texts().entrySet().stream()
        .filter(text -> text.getValue().text().contains("fragment: open furnace live")
            || text.getValue().text().contains("fragment: open-furnace-live"))
        .map(text -> text.getKey()).collect(Collectors.toSet());
    takers.add(PATH);
    assertEquals(takers, files);
    everySoundTreeBecomesAPack(library);
  }

  @Test
  void openFrontMatterAndAMissingTitleKeepTheTreesFromBeingSound() {
    everySoundTreeBecomesAPack(with(text().replaceFirst("(?s)^---\n(.*?)\n---\n", "---\n$1\n")));
    everySoundTreeBecomesAPack(with(text().replaceFirst("title: .*\n", "")));
  }

  @Test
  void noSoundTreeHasAWayThatLeadsNowhere() {
    with(text().replace("```exit", "```")).trees().stream().filter(CompiledTree::isSound)
        .forEach(tree -> assertTrue(tree.tree().steps().stream().flatMap(step -> step.ways().stream())
            .noneMatch(way -> way.target() instanceof Target.Nowhere)));
  }
}
