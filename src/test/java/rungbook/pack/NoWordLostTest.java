package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.pack.page.Edition;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** Every line of prose that an author wrote is in the pack, as often as the tree takes its fragment in. */
@Tag("slow")
class NoWordLostTest {

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(check|task|finding|end|take|exit)\\n.*?^```$");
  private static final Pattern EXIT = Pattern.compile("(?m)^## .*\\n\\n```exit\\n(.*\\n)*?```$");
  private static final Pattern WAY = Pattern.compile("(?m)^- .*: \\[[^]]*]\\([^)]*\\)$");

  private static final String TREE = """
      ---
      title: T
      complaint: C
      ---

      First of all.

      ## Go in

      ```take
      fragment: pull-it
      ```

      Before you take it.

      - out: [Fine](#fine)

      ## Fine

      ```finding
      healthy: yes
      ```
      """;

  private static final String FRAGMENT = """
      ---
      title: Pull it
      exits: out
      ---

      Opening words.

      ## Why it is pulled

      Chapter before.

      ## Pull

      ```task
      minutes: 1
      ```

      Pull now.

      - done: [Out](#out)

      ## What it looks like

      Chapter behind.

      ## Out

      ```exit
      answer: out
      ```

      Exit words.
      """;

  static List<Pack> starters() {
    return Samples.starters();
  }

  @ParameterizedTest
  @MethodSource("starters")
  void packHasEveryLineOfTheTreeAndOfItsFragments(Pack pack) {
    Tree tree = Samples.STARTER.tree(pack.tree()).orElseThrow().tree();
    String page = words(shown(Samples.text(pack.inFolder())));
    Map<String, Integer> wanted = wanted(tree);
    assertTrue(wanted.size() > 100);
    List<String> lost = wanted.entrySet().stream().filter(line -> count(line.getKey(), page) < line.getValue())
        .map(Map.Entry::getKey).toList();
    assertEquals(List.of(), lost);
  }

  /** Also where the starter library writes nothing: a fragment's chapters, and the text of an exit. */
  @Test
  void fragmentMayHaveTextAnywhere() {
    Shared all = Samples.STARTER.shared();
    Document fragment = DocumentReader.read(new Source("shared/fragments/pull-it.md", FRAGMENT));
    Shared shared = new Shared(all.systems(), all.circuits(), all.meters(), all.cautions(), all.qualifications(),
        Map.of("pull it", fragment), all.trees());
    Tree tree = TreeReader.read("t", DocumentReader.read(new Source("trees/t.md", TREE)), shared).tree();
    String page = Samples.text(Samples.pack(tree, Edition.draft()).inFolder());
    List<String> inOrder = List.of("First of all.", "Chapter before.",
        "id=\"go-in--pull\"", "id=\"go-in\"", "Before you take it.", "Opening words.", "Pull now.", "Chapter behind.",
        "Exit words.", "id=\"fine\"");
    assertEquals(inOrder.stream().sorted((a, b) -> page.indexOf(a) - page.indexOf(b)).toList(), inOrder);
    inOrder.forEach(words -> assertTrue(page.contains(words), words));
    assertFalse(page.contains("id=\":chapter-out\""), "an exit's anchor has the prefix of its take");
  }

  /** Each line and how often the tree has it. */
  private static Map<String, Integer> wanted(Tree tree) {
    Map<String, Document> takes = tree.steps().stream().map(step -> step.header()).collect(Collectors.toMap(
        header -> header.source().name() + " " + header.id().substring(0,
            header.id().length() - header.section().slug().length()),
        header -> header.document(), (first, second) -> first));
    Map<String, Integer> wanted = new HashMap<>();
    takes.values().forEach(document -> lines(document.source().text()).forEach(line -> wanted.merge(line, 1,
        Integer::sum)));
    return wanted;
  }

  private static List<String> lines(String text) {
    String prose = text.substring(text.indexOf("\n---\n") + 5);
    prose = WAY.matcher(BLOCK.matcher(EXIT.matcher(prose).replaceAll("")).replaceAll("")).replaceAll("");
    prose = prose.replaceAll("!\\[([^]]*)]\\([^)]*\\)", "").replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1")
        .replaceAll("(?m)^ *\\d+\\. ", "");
    List<String> lines = new ArrayList<>();
    prose.lines().map(NoWordLostTest::words).filter(line -> !line.isBlank()).forEach(lines::add);
    return lines;
  }

  /** What a reader sees, without what only a style or a script reads. */
  private static String shown(String page) {
    return page.replaceAll("(?s)<(style|script)[^>]*>.*?</\\1>", " ").replaceAll("(?s)<svg.*?</svg>", " ")
        .replaceAll("</?(b|i|u|em|strong|code|a|span)\\b[^>]*>", "").replaceAll("<[^>]*>", " ").replace("&lt;", "<")
        .replace("&gt;", ">").replace("&quot;", "\"").replace("&#39;", "'").replace("&amp;", "&");
  }

  private static String words(String text) {
    return WORD.matcher(text).results().map(word -> word.group()).collect(Collectors.joining(" ", " ", " "));
  }

  private static int count(String line, String page) {
    int count = 0;
    for (int at = page.indexOf(line); at >= 0; at = page.indexOf(line, at + 1)) {
      count++;
    }
    return count;
  }
}
