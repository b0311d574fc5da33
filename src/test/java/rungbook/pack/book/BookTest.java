package rungbook.pack.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import rungbook.library.StarterLibrary;
import rungbook.pack.LeftOut;
import rungbook.pack.PackedTree;
import rungbook.pack.Samples;
import rungbook.pack.page.Digest;
import rungbook.pack.page.Edition;
import rungbook.proof.CircuitFacts;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** What a book has in it. */
@Tag("slow")
class BookTest {

  private static final String ID = "no-cooling-blower-runs";

  private static final Pattern WAY = Pattern
      .compile("<a class=\"way(?: good)?(?: out)?\" href=\"(?:chapter-\\d+\\.xhtml)?(?:#[^\"]+)?\"");

  private static final Book STARTERS = BookSamples.starters();
  private static final Map<String, byte[]> FILES = BookSamples.files(STARTERS);

  /** EPUB 3.3, 4.2.3: readers know a book by bytes 30 to 58. */
  @Test
  void mediaTypeIsFirstAndAsItIs() {
    assertEquals("mimetype" + Book.MEDIA_TYPE, new String(STARTERS.bytes(), 30, 28, StandardCharsets.US_ASCII));
  }

  @Test
  void everyStepHasAnAnchorAndALineOfTheContents() throws Exception {
    for (Tree tree : trees()) {
      String file = file(tree.id());
      String contents = text("nav.xhtml");
      List<String> anchors = attributes(file, "id");
      for (Step step : tree.steps()) {
        assertTrue(anchors.contains(Anchors.of(step.id())), step.id());
      }
      assertEquals(tree.steps().size(), contents.split(Pattern.quote("href=\"" + file + "#"), -1).length - 1);
    }
  }

  /** As many links as ways, and every hand-over to another tree of the library is one of them. */
  @Test
  void everyWayIsALinkInTheBook() throws Exception {
    for (Tree tree : trees()) {
      long ways = tree.steps().stream().filter(step -> !step.header().block().kind().equals("take"))
          .mapToLong(step -> step.ways().size()).sum();
      String page = text(file(tree.id()));
      List<MatchResult> links = WAY.matcher(page).results().toList();
      assertEquals(ways, links.size(), tree.id());
      assertFalse(page.contains("not in this book"), tree.id());
    }
  }

  /** Letter by letter the words of the pack, but that a caution which is a bar there is in full here. */
  @Test
  void noWordOfThePackIsMissing() throws Exception {
    for (Tree tree : trees()) {
      String pack = pack(tree);
      String main = pack.substring(pack.indexOf("<main>"), pack.indexOf("</main>"))
          .replaceAll("<p class=\"checking\">.*?</p>", ""); // a book's title page says it
      String folder = words(folded(main)).replaceAll("in the file [a-z0-9-]+\\.html", "in this book");
      String book = words(folded(text(file(tree.id()))).replaceAll("(?s)^.*?</header>", "")).replace("☐ ", "");
      assertEquals(blank(folder, tree), blank(book, tree), tree.id());
    }
  }

  private static String pack(Tree tree) {
    return new String(Samples.starter(tree.id()).bytes(), StandardCharsets.UTF_8);
  }

  /** Without drawings too: a pack keeps one that stands twice in one place. */
  private static String folded(String page) {
    return page.replaceAll("(?s)<svg.*?</svg>", "")
        .replaceAll("(?s)(<p class=\"summary\">.*?</p>|<summary>.*?</summary>|<a class=\"caution [^>]*>.*?</a>)"
            + "(<p class=\"hazard\">.*?</p> )?(<p class=\"avoid\">.*?</p> )?"
            + "(<p><a href=[^>]*>More</a> on this.</p>)?", "$1");
  }

  private static String blank(String words, Tree tree) {
    return words.replaceAll("Digest ?[0-9a-f ]{29}", "Digest " + tree.title().length());
  }

  private static String words(String markup) {
    return markup.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
  }

  @Test
  void everyDrawingIsThere() throws Exception {
    for (Tree tree : trees()) {
      String pack = pack(tree);
      assertEquals(pack.split("<div class=\"leads\">", -1).length,
          text(file(tree.id())).split("<div class=\"leads\"><svg xmlns=", -1).length, tree.id());
    }
  }

  /** Readers that cannot open a fold show its bar; here it is a line in the caution's color. */
  @Test
  void everyCautionAtAStepHasItsBar() throws Exception {
    for (Tree tree : trees()) {
      String pack = pack(tree);
      assertEquals(pack.split("\"><summary>|open><summary>|<a class=\"caution ", -1).length,
          text(file(tree.id())).split("<p class=\"summary\">", -1).length, tree.id());
    }
  }

  @Test
  void nothingRunsAndNothingFolds() {
    FILES.forEach((name, bytes) -> {
      String text = new String(bytes, StandardCharsets.UTF_8);
      assertFalse(text.matches("(?s).*<(?:script|details|input|form|button)\\b.*"), name);
    });
  }

  @Test
  void pictureIsInTheBookOnce() {
    assertEquals(5, BookSamples.files(BookSamples.hostile()).keySet().stream()
        .filter(name -> name.contains("picture-")).count());
  }

  @Test
  void svgPictureHasOnlyItsDrawing() {
    String svg = BookSamples.files(BookSamples.hostile()).entrySet().stream()
        .filter(file -> file.getKey().endsWith(".svg")).map(Map.Entry::getValue)
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8)).findFirst().orElseThrow();
    assertTrue(svg.contains("<rect id=\"r\" width=\"9\" height=\"9\">"), svg);
    assertFalse(svg.matches("(?s).*(?:script|onload|onclick|example|foreign|metadata|DOCTYPE).*"), svg);
  }

  @Test
  void digestFollowsTheContentAndIsTheIdentifier() {
    Book one = BookSamples.starter(ID);
    assertNotEquals(one.digest(), STARTERS.digest());
    assertTrue(BookSamples.text(one, "title.xhtml").contains(Digest.grouped(one.digest())));
    assertTrue(BookSamples.text(one, "package.opf").contains(">ni:///sha-256;"));
  }

  @Test
  void editionAndWhatIsLeftOutAreSaid() {
    Tree tree = StarterLibrary.tree(ID);
    Edition edition = new Edition(Optional.of("7"), Optional.of(LocalDate.of(2026, 3, 4)), Optional.empty());
    Book book = Book.of(
        List.of(PackedTree.of(tree, CircuitFacts.unknown(), BookSamples.MATERIAL, edition)),
        List.of(new LeftOut("trees/half.md", "Half & half", "line 3: no")), BookSamples.MATERIAL);
    assertTrue(BookSamples.text(book, "package.opf").contains(">2026-03-04T00:00:00Z<"));
    assertTrue(BookSamples.text(book, "title.xhtml").contains("Revision 7"));
    assertTrue(BookSamples.text(book, "title.xhtml").contains("<b>Half &amp; half</b> (trees/half.md): line 3: no"));
  }

  private static List<Tree> trees() {
    return Samples.STARTER.trees().stream().map(tree -> tree.tree()).toList();
  }

  /** The chapters are in the order of the trees' names. */
  private static String file(String id) {
    return "chapter-" + (trees().stream().map(Tree::id).sorted().toList().indexOf(id) + 1) + ".xhtml";
  }

  private static String text(String file) {
    return new String(FILES.get("EPUB/" + file), StandardCharsets.UTF_8);
  }

  /** Read by a parser of XML that is not ours. */
  private static List<String> attributes(String file, String name) throws Exception {
    var factory = DocumentBuilderFactory.newDefaultInstance();
    Document page = factory.newDocumentBuilder()
        .parse(new ByteArrayInputStream(text(file).getBytes(StandardCharsets.UTF_8)));
    NodeList all = page.getElementsByTagName("*");
    var values = new ArrayList<String>();
    for (int i = 0; i < all.getLength(); i++) {
      values.add(((Element) all.item(i)).getAttribute(name));
    }
    return values;
  }
}
