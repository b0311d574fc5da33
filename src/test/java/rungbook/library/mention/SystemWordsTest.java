package rungbook.library.mention;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungbook.library.LibraryText;
import rungbook.library.StarterLibrary;
import rungbook.source.Source;

class SystemWordsTest {

  private static final String SYSTEM = """
      ---
      title: S
      ---

      ```points
      R: at board
      R out: at board
      ```

      ```parts
      fan: load, 24 V, 10 VA, R to R out
      spare: joint, R to R out
      ```

      ```variant other fan
      second fan: load, 24 V, 10 VA, R to R out
      ```

      ```variant other fan, sights
      fan lit: when fan on
      ```
      """;

  private static String step(String front, String lines) {
    return "---\ntitle: T\n" + front + "---\n\n## A\n\n```check\n" + lines + "```\n";
  }

  private static LibraryText library() {
    var texts = new TreeMap<String, Source>();
    Stream.of(new Source("shared/systems/s.md", SYSTEM),
        new Source("shared/fragments/f.md", step("", "look: fan lit\n")),
        new Source("shared/fragments/g.md", step("", "look: fan lit\n")),
        new Source("trees/a.md", step("system: s\n", "leads: R out, R\nset: Fan  on\n")
            + "\n## B\n\n```take\nfragment: f\n```\n"),
        new Source("trees/b.md", step("system: other\n", "leads: R out, R\n")))
        .forEach(source -> texts.put(source.name(), source));
    return new LibraryText(texts, new TreeMap<>(), List.of());
  }

  @Test
  void namesAreFoundInTreesOfTheSystemAndInWhatTheyTakeIn() {
    assertEquals(List.of("R points: trees/a.md R", "R out points: trees/a.md R out", "fan parts: trees/a.md Fan  on",
        "spare parts: ", "second fan parts: ", "fan lit sights: shared/fragments/f.md fan lit"),
        SystemWords.of("shared/systems/s.md", library()).stream()
            .map(word -> word.name() + " " + word.kind() + ": " + String.join(", ",
                word.mentions().stream().map(use -> use.source().name() + " " + use.written()).toList()))
            .toList());
  }

  @Test
  void everyTreeOfAStarterSystemUsesSomeOfItsWords() {
    List<String> users = SystemWords.of("shared/systems/fan-coil-electric-heat.md", StarterLibrary.TEXT).stream()
        .flatMap(word -> word.mentions().stream()).map(use -> use.source().name()).distinct().toList();
    assertTrue(users.containsAll(List.of("trees/fan-coil-blower-does-not-run.md", "trees/fan-coil-no-electric-heat.md",
        "shared/fragments/make-fan-coil-dead.md")), users::toString);
    assertTrue(users.stream().noneMatch(user -> user.contains("furnace")), users::toString);
  }
}
