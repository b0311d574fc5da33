package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.report.Report;
import rungbook.report.json.JsonReport;
import rungbook.source.Source;

/** A library that is compiled again is the same as one compiled from nothing, whatever of it was taken over. */
@Tag("slow")
class RecompilationTest {

  private static final String LAST = "outdoor-unit-does-not-stop";

  private static final Pattern LINK = Pattern.compile("]\\(([a-z0-9-]+)\\.md[^)]*\\)");

  /** On two systems; two lead to each other, and one is led to by several. */
  private static final Set<String> TREES = Set.of("no-cooling-blower-runs", "contactor-buzzes-control-voltage-low",
      "outdoor-unit-silent-24-volts-present", "blower-does-not-stop", LAST, "heat-pump-blower-does-not-run");

  /**
   * With all of the shared texts and some of the trees, since each test compiles it twice or more. Ways to the other
   * trees lead to {@link #LAST}.
   */
  private static final LibraryText STARTER = some();

  private static final Library BEFORE = LibraryCompiler.compile(STARTER);
  private static final String TREE = "trees/no-cooling-blower-runs.md";
  private static final Set<String> LEADING_THERE = BEFORE.leadingTo(Set.of(TREE));

  private static LibraryText some() {
    var texts = new TreeMap<>(StarterLibrary.TEXT.texts());
    texts.keySet().removeIf(path -> path.startsWith("trees/")
        && !TREES.contains(path.substring("trees/".length(), path.length() - ".md".length())));
    texts.subMap("trees/", "trees0").replaceAll((path, text) -> new Source(path, LINK.matcher(text.text())
        .replaceAll(link -> Matcher.quoteReplacement(leadsToOne(link) ? link.group() : "](" + LAST + ".md)"))));
    return new LibraryText(texts, StarterLibrary.TEXT.pictures(), List.of());
  }

  private static boolean leadsToOne(MatchResult link) {
    return TREES.contains(link.group(1));
  }

  private static LibraryText with(String path, UnaryOperator<String> change) {
    var texts = new TreeMap<>(STARTER.texts());
    texts.put(path, new Source(path, change.apply(texts.containsKey(path) ? texts.get(path).text() : "")));
    return new LibraryText(texts, STARTER.pictures(), List.of());
  }

  private static LibraryText without(String path) {
    var texts = new TreeMap<>(STARTER.texts());
    texts.remove(path);
    return new LibraryText(texts, STARTER.pictures(), List.of());
  }

  private static String report(Library library) {
    return JsonReport.of(new Report(1, library.found().shown(), library.found().silenced()));
  }

  private static List<String> steps(CompiledTree tree) {
    return tree.tree().steps().stream().map(step -> step.id() + step.actions() + step.ways()).toList();
  }

  /** The paths of the trees that are another object than before. */
  private static Set<String> anew(LibraryText text) {
    Library now = LibraryCompiler.compile(text, BEFORE);
    Library fresh = LibraryCompiler.compile(text);
    assertEquals(report(fresh), report(now));
    assertEquals(fresh.trees().stream().map(CompiledTree::path).toList(),
        now.trees().stream().map(CompiledTree::path).toList());
    for (int i = 0; i < now.trees().size(); i++) {
      assertEquals(steps(fresh.trees().get(i)), steps(now.trees().get(i)));
    }
    return now.trees().stream().filter(tree -> BEFORE.trees().stream().noneMatch(old -> old == tree))
        .map(CompiledTree::path).collect(Collectors.toSet());
  }

  /** The paths of the trees whose text was read again. */
  private static Set<String> readAnew(LibraryText text) {
    Library now = LibraryCompiler.compile(text, BEFORE);
    return now.trees().stream().filter(tree -> BEFORE.trees().stream().noneMatch(old -> old.tree() == tree.tree()))
        .map(CompiledTree::path).collect(Collectors.toSet());
  }

  @Test
  void nothingIsCompiledIfNothingChanged() {
    assertEquals(Set.of(), anew(new LibraryText(STARTER.texts(), STARTER.pictures(), List.of())));
  }

  @Test
  void aChangedTreeIsReadAloneAndLookedAtWithThoseThatLeadThere() {
    LibraryText text = with(TREE, old -> old.replace("## Is the thermostat lit", "## Is the thermostat on"));
    assertEquals(Set.of(TREE), readAnew(text));
    assertEquals(LEADING_THERE, anew(text));
  }

  @Test
  void aCircleOfATreeThatDidNotChangeIsFound() {
    LibraryText text = with("trees/blower-does-not-stop.md",
        old -> old.replace("(outdoor-unit-does-not-stop.md)", "(blower-does-not-stop.md)"));
    anew(text);
    assertTrue(LibraryCompiler.compile(text, BEFORE).found().shown().stream()
        .anyMatch(problem -> problem.code().name().equals("trees-circle")));
  }

  @Test
  void aCautionConcernsNoTree() {
    assertEquals(Set.of(), anew(with("shared/cautions/sharp-edges.md", old -> old + "\nA fan can start.\n")));
  }

  @Test
  void aFragmentConcernsTheTreesThatTakeItIn() {
    String path = STARTER.texts().keySet().stream().filter(one -> one.startsWith("shared/fragments/")).findFirst()
        .orElseThrow();
    LibraryText text = with(path, old -> old.replaceFirst("\n## ", "\nBe careful.\n\n## "));
    Set<String> takers = BEFORE.trees().stream()
        .filter(tree -> tree.tree().steps().stream().anyMatch(step -> step.source().name().equals(path)))
        .map(CompiledTree::path).collect(Collectors.toSet());
    assertEquals(takers, readAnew(text));
    anew(text);
  }

  @Test
  void aSystemConcernsTheTreesThatNameIt() {
    LibraryText text = with("shared/systems/heat-pump.md", old -> old.replace("48 V", "49 V") + "\nMore.\n");
    assertEquals(BEFORE.trees().stream()
        .filter(tree -> tree.tree().system().filter(system -> system.id().equals("heat-pump")).isPresent())
        .map(CompiledTree::path).collect(Collectors.toSet()), readAnew(text));
    anew(text);
  }

  @Test
  void aNewTreeIsReadAloneUnlessAnotherMissedIt() {
    LibraryText text = with("trees/new.md", none -> "---\ntitle: New\ncomplaint: New\n---\n\nNothing.\n");
    assertEquals(Set.of("trees/new.md"), readAnew(text));
    anew(text);
  }

  @Test
  void aTreeThatIsGoneConcernsThoseThatNameIt() {
    anew(without(TREE));
    assertEquals(BEFORE.trees().stream().filter(tree -> Circles.ledTo(tree.tree()).contains("no-cooling-blower-runs")
        && !tree.path().equals(TREE)).map(CompiledTree::path).collect(Collectors.toSet()), readAnew(without(TREE)));
  }

  @Test
  void wordsToAvoidConcernEveryTreeAndReadNone() {
    LibraryText text = with("shared/words.md", old -> old + "\n| thermostat | controller | test |\n");
    assertEquals(Set.of(), readAnew(text));
    anew(text);
  }

  @Test
  void aPictureConcernsEveryTreeAndReadsNone() {
    LibraryText text = new LibraryText(STARTER.texts(), new TreeMap<>(), List.of());
    assertEquals(Set.of(), readAnew(text));
    anew(text);
  }

  @Test
  void whatIsTakenOverTwiceIsStillRight() {
    LibraryText changed = with(TREE, old -> old.replace("under 20", "under 19"));
    Library once = LibraryCompiler.compile(changed, BEFORE);
    Library twice = LibraryCompiler.compile(STARTER, once);
    assertEquals(report(BEFORE), report(twice));
  }
}
