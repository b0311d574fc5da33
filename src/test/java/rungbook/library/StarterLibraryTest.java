package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.system.Names;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/** The library that comes with the program keeps to what its guide tells authors. */
class StarterLibraryTest {

  /** Simplified Technical English (ASD-STE100), procedural sentences; the figure from memory. */
  private static final int MOST_WORDS = 20;

  private static final int MOST_PICTURE_BYTES = 30_000;
  private static final Pattern BLOCK = Pattern.compile("^```.*?^```$", Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern WAY_OR_PICTURE = Pattern.compile("^- [^:\\n]+: \\[.*$|^!\\[.*$", Pattern.MULTILINE);
  private static final Pattern LINK = Pattern.compile("\\[([^]]*)]\\([^)]*\\)");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.:;?!])\\s+|\\n");

  private static final Library LIBRARY = StarterLibrary.LIBRARY;

  /** Their ids: JUnit names a test after its arguments, and a tree's words are its whole text. */
  static Stream<String> trees() {
    return LIBRARY.trees().stream().map(tree -> tree.tree().id());
  }

  static Stream<Path> pictures() throws IOException {
    try (Stream<Path> trees = Files.list(Path.of("trees/pictures"));
        Stream<Path> fragments = Files.list(Path.of("shared/fragments/pictures"))) {
      return Stream.concat(trees, fragments).sorted().toList().stream();
    }
  }

  @Test
  void nothingIsWrongWithIt() {
    assertEquals(List.of(), LIBRARY.found().shown());
  }

  @ParameterizedTest
  @MethodSource("trees")
  void aTreeFindsItsFaultsInEightStepsOrMoreAndTwentyFiveChecksOrFewer(String id) {
    Tree tree = StarterLibrary.tree(id);
    var diagnosis = new HashSet<Integer>();
    reach(0, tree, diagnosis);
    List<Step> own = diagnosis.stream().map(tree.steps()::get).filter(step -> step.source().equals(tree.source()))
        .toList();
    long checks = own.stream().filter(Step.Check.class::isInstance).count();
    assertTrue(own.size() >= 8 && checks <= 25, () -> id + " has " + own.size() + ", checks " + checks);
  }

  /** Marks the steps from one on, up to the findings. */
  private static void reach(int step, Tree tree, Set<Integer> reached) {
    if (reached.add(step) && !(tree.steps().get(step) instanceof Step.Finding)) {
      tree.steps().get(step).ways().forEach(way -> {
        if (way.target() instanceof Target.ToStep to) {
          reach(to.step(), tree, reached);
        }
      });
    }
  }

  @ParameterizedTest
  @MethodSource("trees")
  void aSentenceHasAtMostTwentyWords(String id) {
    Tree tree = StarterLibrary.tree(id);
    String text = tree.source().text().split("\n---\n", 2)[1];
    String prose = LINK.matcher(WAY_OR_PICTURE.matcher(BLOCK.matcher(text).replaceAll("")).replaceAll(""))
        .replaceAll("$1");
    List<String> tooLong = SENTENCE_END.splitAsStream(prose)
        .filter(sentence -> sentence.strip().split("\\s+").length > MOST_WORDS).toList();
    assertEquals(List.of(), tooLong);
  }

  @ParameterizedTest
  @MethodSource("trees")
  void aFindingThatNamesAFaultGoesOnOrRefers(String id) {
    Tree tree = StarterLibrary.tree(id);
    tree.steps().stream().filter(step -> step instanceof Step.Finding finding && !finding.faults().isEmpty())
        .filter(Step::isLast)
        .forEach(step -> assertTrue(((Step.Finding) step).refer().isPresent(), () -> id + ": " + step.title()));
  }

  @Test
  void everyFaultOfTheFurnaceIsNamedBySometere() {
    Set<String> missing = new TreeSet<>(
        LIBRARY.shared().systems().get(Names.key("split-cooling-gas-furnace")).faults().keySet());
    assertFalse(missing.isEmpty());
    LIBRARY.trees().stream().map(CompiledTree::tree)
        .filter(tree -> tree.system().orElseThrow().id().equals("split-cooling-gas-furnace"))
        .flatMap(tree -> tree.steps().stream()).filter(Step.Finding.class::isInstance)
        .flatMap(step -> ((Step.Finding) step).faults().stream()).map(NameRef::key).forEach(missing::remove);
    assertEquals(Set.of(), missing);
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void aPictureIsSmallAndLegibleOnAnyBackground(Path picture) throws IOException {
    String svg = Files.readString(picture);
    assertTrue(svg.length() < MOST_PICTURE_BYTES);
    assertTrue(svg.contains("<title") && svg.contains("rx=\"12\" fill=\"#ffffff\""),
        () -> picture + " has a title and its own card");
  }

  @Test
  void theGuideForAuthorsShowsATreeWithoutProblems() throws IOException {
    assertEquals(List.of(), Example.problems(Files.readString(Path.of("docs/writing-a-tree.md"))));
  }
}
