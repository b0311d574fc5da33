package rungbook.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The pages say of each action what its row in the table says. */
class ActionPagesTest {

  private static final Pattern ROW = Pattern.compile("^\\| `([a-z ]+)` \\| (.*) \\| (.*) \\|$", Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("`([a-z ]+)`");

  @Test
  void tableForAuthorsNamesEveryActionAndWhatUndoesIt() throws IOException {
    Map<String, Set<String>> written = new LinkedHashMap<>();
    ROW.matcher(section("docs/tree-text.md", "### task")).results()
        .forEach(row -> written.put(row.group(1), words(row.group(3))));
    Map<String, Set<String>> meant = new LinkedHashMap<>();
    for (ActionKind kind : ActionKind.values()) {
      meant.put(kind.words(), undoing(kind));
    }
    assertEquals(meant, written);
  }

  @Test
  void pageForContributorsNamesFilesThatAreThere() throws IOException {
    String recipe = section("DEVELOPERS.md", "## Add a verb");
    Set<String> files = Set.of("action/ActionKind", "action/ActionCompiler", "action/EquipmentCondition",
        "rules/flow/FactTable",
        "rules/flow/ActionTransfer", "circuit/network/CircuitState");
    for (String file : files) {
      assertTrue(recipe.contains(file.substring(file.lastIndexOf('/') + 1)), file);
      assertTrue(Files.exists(Path.of("src/main/java/rungbook", file + ".java")), file);
    }
  }

  /** Power switched on again ends what was proved; a control is set back by setting it. */
  private static Set<String> undoing(ActionKind kind) {
    if (kind.object() == ActionObject.SETTING) {
      return Set.of(kind.words());
    }
    Set<EquipmentCondition> ended = kind.begins().stream()
        .map(begun -> begun.needsSuccess() ? EquipmentCondition.ISOLATED : begun).collect(Collectors.toSet());
    return Arrays.stream(ActionKind.values()).filter(other -> other.ends().stream().anyMatch(ended::contains))
        .map(ActionKind::words).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> words(String cell) {
    return WORD.matcher(cell).results().map((MatchResult word) -> word.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String section(String page, String heading) throws IOException {
    String text = Files.readString(Path.of(page));
    int start = text.indexOf("\n" + heading);
    int level = heading.indexOf(' ');
    int end = text.indexOf("\n" + "#".repeat(level) + " ", start + heading.length());
    return text.substring(start, end);
  }
}
