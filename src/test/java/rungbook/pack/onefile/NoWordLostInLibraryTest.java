package rungbook.pack.onefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.tree.Tree;

/** What the single packs say, the one file says too, step by step. */
class NoWordLostInLibraryTest {

  private static final Pattern STEP_OF_MANY = Pattern
      .compile("(?s)<section class=\"page step[^>]* data-id=([^\\s>]++)[^>]*>(.*?)</section>");
  private static final Pattern STEP_ALONE = Pattern
      .compile("(?s)<section class=\"page step[^>]* id=\"([^\"]*+)\"[^>]*>(.*?)</section>");
  private static final Pattern START = Pattern.compile("(?s)<section class=\"page start\".*?</section>");

  /** How a pack is checked, which the file of all trees says of itself, and the file beside it, which that has not. */
  private static final List<String> NOT_OF_ONE_FILE = List.of("This page cannot prove itself",
      "To practice on this system, with the file in the same folder:");

  /** Between the tree's element and the next. */
  private static String part(String page, Tree tree) {
    int from = page.indexOf("<div class=tree data-tree=" + tree.id() + " ");
    int to = page.indexOf("<div class=tree ", from + 1);
    return page.substring(from, to < 0 ? page.length() : to);
  }

  private static Map<String, String> steps(Pattern step, String page) {
    return step.matcher(page).results().collect(Collectors.toMap(match -> match.group(1),
        match -> words(match.group(2))));
  }

  /**
   * Where another tree is, each file says in its own way; so does what is drawn once, and where the words of a folded
   * caution are.
   */
  private static String words(String html) {
    return html.replaceAll("(?s)<small>.*?</small>|<svg.*?</svg>", " ")
        .replaceAll("(?s)(<details class=\"?caution [^>]*><summary>.*?</summary>).*?</details>", "$1")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("\\s+", " ").strip();
  }

  @Test
  void everyStepHasTheWordsOfThePack() {
    String page = Libraries.text(Libraries.starters());
    for (Tree tree : Libraries.trees()) {
      String alone = new String(Samples.starter(tree.id()).bytes(), StandardCharsets.UTF_8);
      Map<String, String> packs = steps(STEP_ALONE, alone);
      assertTrue(packs.size() > 50, tree.id());
      assertEquals(packs, steps(STEP_OF_MANY, part(page, tree)), tree.id());
    }
  }

  /** What a pack says before its first step: of the tree itself with the tree, what trees have in common once. */
  @Test
  void whatIsReadFirstIsThereToo() {
    String page = Libraries.text(Libraries.starters());
    String common = page.substring(page.indexOf("id=:common"), page.indexOf("<div class=tree "));
    for (Tree tree : Libraries.trees()) {
      String alone = new String(Samples.starter(tree.id()).bytes(), StandardCharsets.UTF_8);
      String start = START.matcher(alone).results().findFirst().orElseThrow().group();
      String said = words(common) + " " + words(part(page, tree));
      List<String> lost = Pattern.compile("(?s)<(p|li|h2|h3|dd)\\b[^>]*>(.*?)</\\1>").matcher(start).results()
          .map(line -> words(line.group(2)))
          .filter(line -> !line.isEmpty() && !said.contains(line)).toList();
      assertEquals(List.of(), lost.stream().filter(line -> NOT_OF_ONE_FILE.stream().noneMatch(line::startsWith))
          .toList(), tree.id());
    }
  }
}
