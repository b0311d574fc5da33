package rungbook.markdown;

import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rungbook.source.Span;

/**
 * A document's prose as HTML, without the blocks and the ways on that the tree is made of. HTML in the text is shown as text;
 * links and pictures lead only where {@link Targets} allows.
 */
public final class Prose {

  private final int start;
  private final List<Node> nodes = new ArrayList<>();
  private final HtmlRenderer renderer;

  private Prose(Document document, Targets targets) {
    start = FrontMatter.cut(document.source()).end();
    Flexmark.parse(document.source().text().substring(start)).getChildren().forEach(nodes::add);
    // rendered node by node: the option that takes links out of a whole document is what leaves them in its parts
    var options = new MutableDataSet(Flexmark.OPTIONS).set(HtmlRenderer.ESCAPE_HTML, true)
        .set(HtmlRenderer.DO_NOT_RENDER_LINKS, true);
    renderer = HtmlRenderer.builder(options)
        .linkResolverFactory(new TargetResolver.Factory(targets))
        .attributeProviderFactory(new TargetResolver.DeadLinks())
        .build();
  }

  /** Where links and pictures may lead; an empty answer leaves the words without a link, a picture without its source. */
  public interface Targets {

    Optional<String> link(String written);

    Optional<String> picture(String written);
  }

  public static Prose of(Document document, Targets targets) {
    return new Prose(document, targets);
  }

  /** What stands before the first level-2 heading. */
  public String introduction() {
    int end = nodes.stream().filter(Prose::isSectionHeading).findFirst().map(this::startOf).orElse(Integer.MAX_VALUE);
    return html(node -> startOf(node) < end && !isKnownBlock(node));
  }

  /** A section's prose, its heading left out. */
  public String of(Section section) {
    return html(node -> section.span().start() <= startOf(node) && startOf(node) < section.span().end()
        && !isSectionHeading(node) && !isKnownBlock(node) && !holdsWays(node, section));
  }

  /** Everything after the front matter, as it stands. */
  public String whole() {
    return html(node -> true);
  }

  private String html(Predicate<Node> wanted) {
    return nodes.stream().filter(wanted).map(renderer::render).collect(Collectors.joining());
  }

  private int startOf(Node node) {
    return start + node.getStartOffset();
  }

  private static boolean isSectionHeading(Node node) {
    return node instanceof Heading heading && heading.getLevel() == 2;
  }

  private static boolean isKnownBlock(Node node) {
    return node instanceof FencedCodeBlock fence && Kinds.isKnown(fence.getInfo().toString().strip());
  }

  private boolean holdsWays(Node node, Section section) {
    return node instanceof BulletList && section.ways().stream().map(ParsedWay::span).anyMatch(way -> isWithin(node, way));
  }

  private boolean isWithin(Node node, Span span) {
    return startOf(node) <= span.start() && span.end() <= start + node.getEndOffset();
  }
}
