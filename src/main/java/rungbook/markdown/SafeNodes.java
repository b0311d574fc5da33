package rungbook.markdown;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.DataKey;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Prose.Targets;

/** Renders every node that has a URL, so that each URL is checked. */
final class SafeNodes implements NodeRenderer {

  private static final Targets NONE = new Targets() {
    @Override
    public Optional<String> picture(String target) {
      return Optional.empty();
    }

    @Override
    public Optional<String> link(String target) {
      return Optional.empty();
    }
  };

  /** Set on a document before it is rendered. */
  static final DataKey<Targets> TARGETS = new DataKey<>("TARGETS", NONE);

  SafeNodes(DataHolder options) {}

  @Override
  public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
    return Set.of(
        new NodeRenderingHandler<>(Link.class,
            (node, context, html) -> link(node, node.getUrl().unescape(), node.getTitle().unescape(), context, html)),
        new NodeRenderingHandler<>(LinkRef.class, this::reference),
        new NodeRenderingHandler<>(AutoLink.class,
            (node, context, html) -> plainLink(node.getText().toString(), "", context, html)),
        new NodeRenderingHandler<>(MailLink.class,
            (node, context, html) -> plainLink(node.getText().toString(), "mailto:", context, html)),
        new NodeRenderingHandler<>(Image.class,
            (node, context, html) -> picture(node, node.getUrl().unescape(), node.getTitle().unescape(), context,
                html)),
        new NodeRenderingHandler<>(ImageRef.class, this::pictureReference));
  }

  private void reference(LinkRef node, NodeRendererContext context, HtmlWriter html) {
    var target = node.getReferenceNode(context.getDocument());
    if (target == null) {
      asWritten(node, context, html);
    } else {
      link(node, target.getUrl().unescape(), target.getTitle().unescape(), context, html);
    }
  }

  private void pictureReference(ImageRef node, NodeRendererContext context, HtmlWriter html) {
    var target = node.getReferenceNode(context.getDocument());
    if (target == null) {
      asWritten(node, context, html);
    } else {
      picture(node, target.getUrl().unescape(), target.getTitle().unescape(), context, html);
    }
  }

  /** A link reference with no definition is plain text in brackets. */
  private static void asWritten(Node node, NodeRendererContext context, HtmlWriter html) {
    Node first = node.getFirstChild();
    int start = first == null ? node.getEndOffset() : first.getStartOffset();
    int end = first == null ? node.getEndOffset() : node.getLastChild().getEndOffset();
    html.text(node.getChars().subSequence(0, start - node.getStartOffset()).unescape());
    context.renderChildren(node);
    html.text(node.getChars().subSequence(end - node.getStartOffset()).unescape());
  }

  private void link(Node node, String target, String title, NodeRendererContext context, HtmlWriter html) {
    Optional<String> address = targets(context).link(target);
    address.ifPresent(found -> html.raw("<a href=\"" + attribute(found) + "\"" + titled(title) + ">"));
    context.renderChildren(node);
    address.ifPresent(found -> html.raw("</a>"));
  }

  private void plainLink(String text, String scheme, NodeRendererContext context, HtmlWriter html) {
    Optional<String> address = targets(context).link(scheme + text);
    address.ifPresent(found -> html.raw("<a href=\"" + attribute(found) + "\">"));
    html.text(text);
    address.ifPresent(found -> html.raw("</a>"));
  }

  private void picture(Node node, String target, String title, NodeRendererContext context, HtmlWriter html) {
    String words = Inlines.words(node);
    targets(context).picture(target).ifPresentOrElse(
        found -> html.raw("<img src=\"" + attribute(found) + "\" alt=\"" + Escaping.escapeHtml(words, false) + "\""
            + titled(title) + " />"),
        () -> html.text(words));
  }

  private static String titled(String title) {
    return title.isEmpty() ? "" : " title=\"" + Escaping.escapeHtml(title, false) + "\"";
  }

  private static String attribute(String address) {
    return Escaping.escapeHtml(Escaping.percentEncodeUrl(address), false);
  }

  private static Targets targets(NodeRendererContext context) {
    return TARGETS.get(context.getDocument());
  }
}
