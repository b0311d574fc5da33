package rungbook.map;

import java.util.Locale;
import java.util.stream.Collectors;
import rungbook.map.DiagramLayout.Box;
import rungbook.map.DiagramLayout.Run;
import rungbook.text.Markup;

/**
 * Writes a diagram as SVG. It needs no style sheet; a page may set {@code --map-ink}, {@code --map-face}, {@code
 * --map-paper} and {@code --map-way} to its own colors.
 */
public final class Drawing {
  private static final String INK = "var(--map-ink,#16222c)";
  private static final String FACE = "var(--map-face,#fffdf6)";
  private static final String PAPER = "var(--map-paper,#f4f1e7)";
  private static final String WAY = "var(--map-way,#0c3d80)";
  private static final int REPLACEMENT = 0xFFFD;
  private static final double THIN_PX = 1.5;
  private static final double HEAVY_PX = 5;
  private static final double WIDEST_WIRE_PX = 9;

  private final DiagramLayout arrangement;
  private final String page;
  private final StringBuilder svg = new StringBuilder();

  private Drawing(DiagramLayout arrangement, String page) {
    this.arrangement = arrangement;
    this.page = page;
  }

  /** An {@code <svg>} element for the page with the steps; each node links to its step. */
  public static String of(Diagram diagram) {
    return of(diagram, "");
  }

  /**
   * An {@code <svg>} element for another page.
   *
   * @param page the URL of the page with the steps
   */
  public static String of(Diagram diagram, String page) {
    return Extent.isTooLarge(diagram) ? tooLarge(diagram) : new Drawing(DiagramLayout.of(diagram), page).draw();
  }

  private static String tooLarge(Diagram diagram) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"map\" width=\"640\" height=\"48\" viewBox=\"0 0 640 48\" "
        + "font-family=\"system-ui,sans-serif\"><text x=\"12\" y=\"30\" font-size=\"15\" fill=\"" + INK
        + "\">This tree is too large to draw: "
        + diagram.nodes().size() + " steps, " + diagram.wires().size() + " ways on.</text></svg>";
  }

  private String draw() {
    add("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"map\" role=\"group\" aria-label=\"Map of %s\" width=\"%s\" height=\"%s\" "
        + "viewBox=\"0 0 %2$s %3$s\" font-family=\"system-ui,sans-serif\" fill=\"none\" stroke=\"%s\" "
        + "stroke-width=\"%s\" stroke-linejoin=\"round\">",
        escape(arrangement.diagram().title()), px(arrangement.width()), px(arrangement.height()), INK, px(THIN_PX));
    arrangement.runs().forEach(this::wire);
    arrangement.runs().forEach(this::answer);
    arrangement.boxes().stream().findFirst().ifPresent(this::feed);
    arrangement.boxes().forEach(this::node);
    return svg.append("</svg>").toString();
  }

  // the first step is fed from R, as every rung of a control drawing is
  private void feed(Box first) {
    var x = first.x() + first.width() / 2;
    add("<circle cx=\"%s\" cy=\"20\" r=\"13\" fill=\"%s\"/>", px(x), FACE);
    text(x, 25, 14, "700", "middle", "R");
    add("<path d=\"M%s 33V%s\"/>", px(x), px(first.y()));
  }

  private void wire(Run run) {
    var width = run.wire().share().isPresent() ? THIN_PX + (WIDEST_WIRE_PX - THIN_PX) * run.wire().share().getAsDouble()
        : THIN_PX;
    var path = run.points().stream().map(point -> px(point.x()) + " " + px(point.y()))
        .collect(Collectors.joining("L", "M", ""));
    add("<path d=\"%s\" stroke-width=\"%s\"%s/>", path, px(width),
        run.wire().share().isPresent() ? flow(run.wire().share().getAsDouble()) : "");
    var end = run.points().get(run.points().size() - 1);
    add("<path d=\"M%s %sl-5 -9h10z\" fill=\"%s\"/>", px(end.x()), px(end.y()), INK);
  }

  private String address(Diagram.Node node) {
    return node.href().startsWith("#") ? page + node.href() : node.href();
  }

  private static String flow(double share) {
    return share > 0 ? " stroke=\"" + WAY + "\"" : " stroke-dasharray=\"4 4\"";
  }

  private void answer(Run run) {
    var width = DiagramLayout.answerWidth(run.answer());
    add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke=\"none\"/>",
        px(run.answerAt().x()), px(run.answerAt().y()), px(width), px(DiagramLayout.LINE_PX), PAPER);
    text(run.answerAt().x() + width / 2, run.answerAt().y() + 14, DiagramLayout.NOTE_PX, "600", "middle", run.answer());
  }

  private void node(Box box) {
    var node = box.node();
    add("<a href=\"%s\" aria-label=\"%s\">", escape(address(node)),
        escape(node.shape().word() + ": " + node.title() + ". " + node.note()));
    outline(box);
    add("<circle cx=\"%s\" cy=\"%s\" r=\"12\" fill=\"%s\" stroke=\"none\"/>", px(box.x() + box.width() / 2),
        px(box.y()), INK);
    add("<text x=\"%s\" y=\"%s\" font-size=\"13\" font-weight=\"700\" text-anchor=\"middle\" fill=\"%s\" "
        + "stroke=\"none\">%s</text>",
        px(box.x() + box.width() / 2), px(box.y() + 5), FACE, node.shape().letter());
    lines(box);
    add("</a>");
  }

  private void outline(Box box) {
    switch (box.node().shape()) {
      case CONTACT -> contact(box);
      case COIL -> coil(box);
      case BLOCK -> block(box);
      case RAIL -> rail(box);
      case FLAG -> flag(box);
    }
  }

  private void contact(Box box) {
    rect(box, THIN_PX);
    var bottom = box.y() + box.height();
    add("<path d=\"M%s %sV%sM%s %2$sV%3$s\" stroke-width=\"%s\"/>",
        px(box.x() + 2), px(box.y()), px(bottom), px(box.x() + box.width() - 2), px(HEAVY_PX));
  }

  private void coil(Box box) {
    var bulge = 22;
    var left = box.x() + bulge / 2.0;
    var right = box.x() + box.width() - bulge / 2.0;
    var bottom = box.y() + box.height();
    add("<path d=\"M%s %sH%sQ%s %s %3$s %sH%1$sQ%s %5$s %1$s %2$sz\" fill=\"%s\"/>", px(left), px(box.y()), px(right),
        px(right + bulge), px(box.y() + box.height() / 2), px(bottom), px(left - bulge), FACE);
    add("<path d=\"M%s %sQ%s %s %1$s %sM%s %2$sQ%s %4$s %6$s %5$s\" stroke-width=\"%s\"/>", px(left), px(box.y()),
        px(left - bulge),
        px(box.y() + box.height() / 2), px(bottom), px(right), px(right + bulge), px(HEAVY_PX));
  }

  private void block(Box box) {
    rect(box, THIN_PX);
    add("<path d=\"M%s %sH%s\" stroke-width=\"%s\"/>", px(box.x()), px(box.y() + 2), px(box.x() + box.width()),
        px(HEAVY_PX));
  }

  private void rail(Box box) {
    rect(box, THIN_PX);
    var bottom = box.y() + box.height();
    add("<path d=\"M%s %sH%s\" stroke-width=\"%s\"/>", px(box.x() - 8), px(bottom), px(box.x() + box.width() + 8),
        px(HEAVY_PX));
  }

  private void flag(Box box) {
    var tip = box.y() + box.height();
    add("<path d=\"M%s %sH%sV%sL%s %sL%1$s %4$sz\" fill=\"%s\" stroke-dasharray=\"6 4\"/>", px(box.x()), px(box.y()),
        px(box.x() + box.width()), px(tip - 14), px(box.x() + box.width() / 2), px(tip), FACE);
  }

  private void rect(Box box, double strokePx) {
    add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke-width=\"%s\"/>",
        px(box.x()), px(box.y()), px(box.width()), px(box.height()), FACE, px(strokePx));
  }

  private void lines(Box box) {
    var x = box.x() + box.width() / 2;
    var y = box.y() + 31;
    for (var line : box.title()) {
      text(x, y, DiagramLayout.TITLE_PX, "700", "middle", line);
      y += DiagramLayout.LINE_PX;
    }
    for (var line : box.note()) {
      text(x, y, DiagramLayout.NOTE_PX, "400", "middle", line);
      y += DiagramLayout.LINE_PX;
    }
  }

  private void text(double x, double y, double heightPx, String weight, String anchor, String words) {
    add("<text x=\"%s\" y=\"%s\" font-size=\"%s\" font-weight=\"%s\" text-anchor=\"%s\" fill=\"%s\" "
        + "stroke=\"none\">%s</text>",
        px(x), px(y), px(heightPx), weight, anchor, INK, escape(words));
  }

  private void add(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values));
  }

  private static String escape(String text) {
    return Markup.escape(allowed(text));
  }

  /** XML 1.0, section 2.2: control characters and lone surrogates are not allowed in a document, not even escaped. */
  private static String allowed(String text) {
    if (text.codePoints().allMatch(Drawing::isAllowed)) {
      return text;
    }
    return text.codePoints().map(c -> isAllowed(c) ? c : REPLACEMENT)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
  }

  private static boolean isAllowed(int c) {
    return c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c < 0xD800) || (c >= 0xE000 && c < 0xFFFE)
        || c >= 0x10000;
  }

  private static String px(double value) {
    var tenths = Math.round(value * 10);
    return tenths % 10 == 0 ? Long.toString(tenths / 10) : tenths / 10.0 + "";
  }
}
