package rungbook.markdown;

import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungbook.markdown.preflight.Preflight;

/**
 * A document's prose as safe HTML: HTML in the text is displayed as text, and links and pictures lead only where {@link
 * Targets} allows. Leaves out the tree's blocks and ways on, which a page renders itself. A rejected document has no
 * prose.
 */
public final class Prose {

  /**
   * Without heading ids: they are not used here, and the library would generate the ids of the whole document for each
   * node.
   */
  private static final HtmlRenderer RENDERER = renderer(new MutableDataSet(Flexmark.OPTIONS)
      .set(HtmlRenderer.GENERATE_HEADER_ID, false).set(HtmlRenderer.RENDER_HEADER_ID, false));

  private final int shift;
  private final List<Node> introduction = new ArrayList<>();
  private final Map<Integer, List<Node>> bySectionStart = new TreeMap<>();
  private final List<Node> all = new ArrayList<>();

  private Prose(Document document, Targets targets) {
    shift = FrontMatter.cut(document.source()).end();
    if (Preflight.inspect(document.source(), document.limits()).isEmpty()) {
      parse(document.source().text().substring(shift), targets);
    }
  }

  private void parse(String text, Targets targets) {
    try {
      var root = Flexmark.parse(text);
      root.set(SafeNodes.TARGETS, targets);
      sort(root);
    } catch (StackOverflowError deep) { // refused by the reader for the same reason
      all.clear();
    }
  }

  /** Where links and pictures may lead. An empty result keeps the words and drops the link or the picture. */
  public interface Targets {

    Optional<String> link(String written);

    Optional<String> picture(String written);

    /** The link if it is safe on any page: within the page, or to the web, an email address, or a phone number. */
    static Optional<String> safeLink(String written) {
      String lower = written.toLowerCase(Locale.ROOT);
      boolean safe = lower.startsWith("#") || lower.startsWith("https://") || lower.startsWith("http://")
          || lower.startsWith("mailto:") || lower.startsWith("tel:");
      return safe ? Optional.of(written) : Optional.empty();
    }
  }

  public static Prose of(Document document, Targets targets) {
    return new Prose(document, targets);
  }

  /** The prose before the first level-2 heading. */
  public String introduction() {
    return introduction.stream().filter(node -> !isKnownBlock(node)).map(Prose::html).collect(Collectors.joining());
  }

  /** A section's prose without its heading. */
  public String of(Section section) {
    return bySectionStart.getOrDefault(section.span().start(), List.of()).stream()
        .filter(node -> !isKnownBlock(node) && !holdsWays(node, section)).map(Prose::html)
        .collect(Collectors.joining());
  }

  /** Everything after the front matter, including blocks and ways on. */
  public String whole() {
    return all.stream().map(Prose::html).collect(Collectors.joining());
  }

  private void sort(Node root) {
    List<Node> current = introduction;
    for (Node node : root.getChildren()) {
      all.add(node);
      if (node instanceof Heading heading && heading.getLevel() == 2) {
        current = new ArrayList<>();
        bySectionStart.put(shift + node.getStartOffset(), current);
      } else {
        current.add(node);
      }
    }
  }

  static HtmlRenderer renderer(DataHolder options) {
    return HtmlRenderer.builder(options).escapeHtml(true).nodeRendererFactory(SafeNodes::new).build();
  }

  /** Renders parsed Markdown as HTML. */
  static String html(Node node) {
    return RENDERER.render(node);
  }

  private static boolean isKnownBlock(Node node) {
    return node instanceof FencedCodeBlock fence && Kinds.isKnown(fence.getInfo().toString().strip());
  }

  private boolean holdsWays(Node node, Section section) {
    if (!(node instanceof BulletList) || section.ways().isEmpty()) {
      return false;
    }
    int first = section.ways().get(0).span().start();
    return shift + node.getStartOffset() <= first && first < shift + node.getEndOffset();
  }
}
