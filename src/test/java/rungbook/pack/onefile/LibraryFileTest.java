package rungbook.pack.onefile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import rungbook.pack.LeftOut;
import rungbook.pack.PackedTree;
import rungbook.pack.Samples;
import rungbook.pack.Verify;
import rungbook.pack.page.Edition;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

class LibraryFileTest {

  private static final Pattern ID = Pattern.compile("<[^>]* id=\"?([^\\s\"'>]+)");
  private static final Pattern LINK = Pattern.compile("<[^>]* href=\"?#([^\\s\"'>]+)");
  private static final String BUZZES = "contactor-buzzes-control-voltage-low";

  private static List<String> all(Pattern pattern, String page) {
    return pattern.matcher(page).results().map(match -> match.group(1)).toList();
  }

  @Test
  void everyIdIsThereOnceAndEveryLinkLeadsToOne() {
    String page = Libraries.text(Libraries.starters());
    List<String> ids = all(ID, page);
    Set<String> distinct = new HashSet<>(ids);
    assertEquals(ids.size(), distinct.size(), "an id stands twice");
    List<String> links = all(LINK, page);
    assertTrue(links.size() > 5_000);
    assertEquals(List.of(), links.stream().filter(link -> !distinct.contains(link)).toList());
    assertFalse(page.contains(".html#") || page.contains(" href=contactor"), "a link out of the file");
    Libraries.trees().forEach(tree -> assertTrue(distinct.contains(tree.id()), tree.id()));
  }

  @Test
  void bytesAreTheSameInWhateverOrder() {
    List<Tree> trees = new ArrayList<>(List.of(Libraries.tree("outdoor-unit-does-not-stop"), Libraries.tree(BUZZES)));
    LibraryFile file = Libraries.of(trees);
    Collections.reverse(trees);
    assertArrayEquals(file.bytes(), Libraries.of(trees).bytes());
  }

  @Test
  void verifyReadsTheDigestThatItShows() {
    LibraryFile file = Libraries.of(List.of(Libraries.tree(BUZZES)));
    Verify.Verdict.Intact intact = assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(file.bytes()));
    assertEquals(file.digest(), intact.digest());
    assertEquals("Rungbook library", intact.title());
    assertEquals("all-trees.html", intact.file());
    assertTrue(Libraries.text(file).contains("<code class=\"digest\">" + file.shortDigest() + "</code>"));
    byte[] changed = file.bytes().clone();
    changed[changed.length / 2] ^= 1;
    assertInstanceOf(Verify.Verdict.Altered.class, Verify.of(changed));
  }

  /** At the step that a hand-over names, and otherwise at its first step, not at what is read before it. */
  @Test
  void handOverEntersTheOtherTreeAtAStep() {
    String page = Libraries.text(Libraries.starters());
    ShortAnchors anchors = new ShortAnchors(Libraries.trees());
    int handOvers = 0;
    for (Tree tree : Libraries.trees()) {
      for (Target.ToTree to : tree.steps().stream().flatMap(step -> step.ways().stream()).map(way -> way.target())
          .filter(Target.ToTree.class::isInstance).map(Target.ToTree.class::cast).toList()) {
        String step = to.step().orElse(Libraries.tree(to.tree()).steps().get(0).id());
        assertTrue(page.contains(" href=#" + anchors.of(to.tree(), step) + ">"), to.toString());
        handOvers++;
      }
    }
    assertTrue(handOvers > 10);
  }

  @Test
  void treeThatIsNotThereIsNamedWithoutALink() {
    Tree tree = Libraries.tree(BUZZES);
    PackedTree packed = Libraries.packed(tree, Edition.draft());
    String page = Libraries.text(LibraryFile.of(List.of(packed),
        List.of(new LeftOut("trees/bad.md", "Bad <tree>", "line 3: `x` is no step")), Samples.MATERIAL));
    assertTrue(page.contains("Another tree, which is not in this file: no-cooling-blower-runs"));
    assertTrue(page.indexOf("<b>Bad &lt;tree&gt;</b>") < page.indexOf("class=\"ways trees\""), "named first");
    assertTrue(page.contains("<b>Bad &lt;tree&gt;</b> (<code>trees/bad.md</code>): line 3: <code>x</code> is no step"));
  }

  /** Seventeen trees are on three systems. */
  @Test
  void circuitOfASystemIsThereOnce() {
    Pattern circuit = Pattern.compile("(<section class=\"page circuit)");
    assertEquals(3, all(circuit, Libraries.text(Libraries.starters())).size());
  }

  /** The trees of today have 3,412 pages of steps: a fragment's are there at each place that takes it in. */
  @Test
  void pageOfAStepTakesFewBytes() throws IOException {
    byte[] file = Libraries.starters().bytes();
    long pages = all(Pattern.compile("(<section class=\"page step)"), Libraries.text(Libraries.starters())).size();
    assertTrue(pages > 2_000);
    assertTrue(file.length < 1_480 * pages, file.length + " bytes");
    var packed = new ByteArrayOutputStream();
    try (var gzip = new GZIPOutputStream(packed)) {
      gzip.write(file);
    }
    assertTrue(packed.size() < 190 * pages, packed.size() + " bytes packed");
  }

  @Test
  void recordFindsTheStepsOwnId() {
    Tree tree = Libraries.tree(BUZZES);
    String page = Libraries.text(Libraries.of(List.of(tree)));
    for (Step step : tree.steps()) {
      if (!step.header().block().kind().equals("take")) {
        assertTrue(page.contains(" data-id=" + step.id() + ">"), step.id());
      }
    }
  }
}
