package rungbook.library.mention;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungbook.library.LibraryText;
import rungbook.library.StarterLibrary;
import rungbook.source.Source;

class MentionsTest {

  private static final LibraryText TEXT = StarterLibrary.TEXT;

  /** A tree that names one of each kind, some of them in other words than the files'. */
  private static final String TREE = """
      ---
      title: T
      system: Some-System
      meter: "field meter"
      ---

      See [the other](other.md#light) and ![a board](pictures/board.svg).

      ## Open it

      ```take
      who: qualified person
      cautions: line voltage, Moving-Blower, unknown thing
      fragment: open-it
      ```

      - done: [On](other.md)
      - gone: [There](missing.md)
      """;

  private static LibraryText library() {
    var texts = new TreeMap<String, Source>();
    Stream.of("shared/systems/some-system.md", "shared/meters/field-meter.md",
        "shared/qualifications/qualified-person.md",
        "shared/cautions/line-voltage.md", "shared/cautions/moving-blower.md", "shared/fragments/open-it.md",
        "trees/other.md").forEach(path -> texts.put(path, new Source(path, "---\ntitle: X\n---\n")));
    texts.put("trees/t.md", new Source("trees/t.md", TREE));
    return new LibraryText(texts, new TreeMap<>(Map.of("trees/pictures/board.svg", new byte[0])), List.of());
  }

  @Test
  void everyKindOfFileIsFoundWhereItIsNamed() {
    assertEquals(List.of("Some-System > shared/systems/some-system.md", "field meter > shared/meters/field-meter.md",
        "other > trees/other.md", "pictures/board.svg > trees/pictures/board.svg",
        "qualified person > shared/qualifications/qualified-person.md",
        "line voltage > shared/cautions/line-voltage.md", "Moving-Blower > shared/cautions/moving-blower.md",
        "open-it > shared/fragments/open-it.md", "other > trees/other.md"),
        Mentions.in(library()).stream().map(mention -> mention.written() + " > " + mention.path()).toList());
  }

  @Test
  void aNameIsWrittenAsTheAuthorWroteIt() {
    assertRenamed("shared/cautions/line-voltage.md", "shared/cautions/deadly-voltage.md",
        "cautions: deadly voltage, M");
    assertRenamed("shared/cautions/moving-blower.md", "shared/cautions/fan-turns.md", "voltage, fan-turns, unknown");
    assertRenamed("shared/systems/some-system.md", "shared/systems/heat-pump.md", "system: heat-pump\n");
    assertRenamed("shared/meters/field-meter.md", "shared/meters/clamp-meter.md", "meter: \"clamp meter\"");
    assertRenamed("trees/other.md", "trees/next-one.md", "[the other](next-one.md#light)", "[On](next-one.md)");
    assertRenamed("trees/pictures/board.svg", "trees/pictures/new.svg", "![a board](pictures/new.svg)");
  }

  private static void assertRenamed(String from, String to, String... expected) {
    LibraryText after = Renaming.of(from, to, library()).applied(library());
    String tree = after.texts().get("trees/t.md").text();
    for (String words : expected) {
      assertTrue(tree.contains(words), tree);
    }
    assertEquals(Mentions.of(from, library()).size(), Mentions.of(to, after).size());
    assertEquals(List.of(), Mentions.of(from, after));
  }

  @Test
  void aFileOfEachFolderOfTheStarterLibraryCanBeRenamed() {
    Map<String, Long> counts = Mentions.in(TEXT).stream()
        .collect(Collectors.groupingBy(Mention::path, Collectors.counting()));
    Map<String, String> one = counts.keySet().stream()
        .collect(Collectors.toMap(path -> path.substring(0, path.lastIndexOf('/') + 1), path -> path, (a, b) -> a));
    for (String path : one.values()) {
      String to = path.substring(0, path.lastIndexOf('/') + 1) + "another-name" + path.substring(path.lastIndexOf('.'));
      LibraryText after = Renaming.of(path, to, TEXT).applied(TEXT);
      Map<String, Long> then = Mentions.in(after).stream()
          .collect(Collectors.groupingBy(Mention::path, Collectors.counting()));
      assertEquals(counts.get(path), then.get(to), path);
      assertEquals(counts.size(), then.size(), path);
    }
    assertEquals(8, one.size(), one::toString);
    assertTrue(counts.size() > 60, () -> counts.size() + " files are named");
  }

  @Test
  void theTreesOfAFragmentAreThoseThatTakeIt() {
    List<String> names = Mentions.of("shared/fragments/make-furnace-dead.md", TEXT).stream()
        .map(mention -> mention.source().name()).distinct().toList();
    assertEquals(
        TEXT.texts().values().stream().filter(source -> source.text().contains("fragment: make-furnace-dead\n"))
            .map(Source::name).toList(),
        names);
  }

  @Test
  void wordsAreChangedWhereTheyAreWhole() {
    assertReworded("gas gaslight gas-gas.", "gas", "fuel", "fuel gaslight fuel-fuel.");
    assertReworded("aaaa", "aa", "b", "aaaa");
    assertReworded("24 V, 24 VAC", "24 V", "24 volts", "24 volts, 24 VAC");
    assertReworded("a->b->c", "->", " to ", "a to b to c");
  }

  private static void assertReworded(String text, String words, String others, String expected) {
    var library = new LibraryText(new TreeMap<>(Map.of("trees/a.md", new Source("trees/a.md", text))), new TreeMap<>(),
        List.of());
    Function<LibraryText, String> only = some -> some.texts().get("trees/a.md").text();
    assertEquals(expected, only.apply(Rewording.of(words, others, library).applied(library)));
  }
}
