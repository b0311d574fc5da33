package rungbook.pack.circuit;

import java.util.ArrayList;
import java.util.List;
import rungbook.ladder.Element;
import rungbook.ladder.Node;
import rungbook.ladder.Symbol;
import rungbook.text.Lettering;
import rungbook.text.Markup;

/**
 * A rung turned upright, from the left rail at the top to the right rail at the bottom, so that its names are as large
 * as text on a phone: those of points on the left of the line, those of parts on its right.
 */
final class Upright {

  /** The unit of all lengths: the drawing is so wide. */
  static final int WIDTH = 300;

  static final int LINE = 120;
  static final int LEADING = 18;

  /** Bold letters are wider than those that widths are from, and so are those of some faces. */
  private static final double LETTERS = 15 * 1.08;
  private static final double BOLD = 16 * 1.25;
  private static final int POINTS = 90;
  private static final int PARTS = 150;
  private static final int MOST_LINES = 12;
  private static final int WIRE = 24;
  private static final double SCALE = 0.8;

  /** Half of what is left for the tag of a lead. */
  private static final int TAG = 13;

  private final Pieces pieces;
  private final StringBuilder out = new StringBuilder();
  private final StringBuilder lines = new StringBuilder();
  private final StringBuilder dots = new StringBuilder();
  private final List<Integer> levels = new ArrayList<>();
  private int y;

  /** Writes what is drawn in several places, or refers to it. */
  interface Pieces {

    /** @param svg one element, at the height 0 */
    String at(String key, String svg, int y);
  }

  /**
   * @param svg its elements
   * @param levels the height of each node
   */
  record Drawn(String svg, int height, List<Integer> levels) {

    Drawn {
      levels = List.copyOf(levels);
    }
  }

  private Upright(Pieces pieces) {
    this.pieces = pieces;
  }

  static Drawn of(List<Node> nodes, List<Element> elements, boolean isLine, Faults faults, Pieces pieces) {
    var drawing = new Upright(pieces);
    drawing.first(nodes.get(0), isLine);
    for (int i = 0; i < elements.size(); i++) {
      drawing.element(elements.get(i), faults, half(nodes.get(i)) + half(nodes.get(i + 1)) + 2);
      if (i < elements.size() - 1) {
        drawing.point(nodes.get(i + 1));
      }
    }
    drawing.last(nodes.get(nodes.size() - 1), isLine);
    return new Drawn(path("", drawing.lines) + path(" class=\"dot\"", drawing.dots) + drawing.out, drawing.y + 4,
        drawing.levels);
  }

  private static String path(String kind, StringBuilder data) {
    return data.length() == 0 ? "" : "<path" + kind + " d=\"" + data + "\"/>";
  }

  /** What can be wrong with an element, for the script; empty if nothing can. */
  interface Faults {
    String in(Element element);
  }

  private void first(Node node, boolean isLine) {
    if (isRail(node)) {
      List<String> words = words(node, WIDTH - 4);
      out.append(text(words, 2, 15, ""));
      y = words.size() * LEADING + 8;
      rail(isLine);
    } else {
      y = half(node);
      point(node);
    }
  }

  private void last(Node node, boolean isLine) {
    if (isRail(node)) {
      rail(isLine);
      List<String> words = words(node, WIDTH - 4);
      out.append(text(words, 2, y + 22, ""));
      y += words.size() * LEADING + 10;
    } else {
      point(node);
      if (node.kind() == Node.Kind.GROUND) {
        lines.append("M" + LINE + " ").append(y).append("v12m-10 0h20m-16 5h12m-8 5h4");
        y += 12;
      }
      y += half(node);
    }
  }

  private void rail(boolean isLine) {
    out.append("<path class=\"").append(isLine ? "rail thick" : "rail").append("\" d=\"M2 ").append(y).append("H")
        .append(WIDTH - 2).append("\"/>");
    levels.add(y);
  }

  private void point(Node node) {
    List<String> words = words(node, POINTS);
    dots.append("M" + LINE + " ").append(y).append("h0");
    out.append(pieces.at("n" + node, text(words, POINTS, 5 - (words.size() - 1) * LEADING / 2, "point"), y));
    levels.add(y);
  }

  private void element(Element element, Faults faults, int room) {
    List<String> words = Lettering.wrap(element.name(), BOLD, WIDTH - PARTS - 2, MOST_LINES);
    int own = isWire(element) ? WIRE : 2 * half(element.symbol());
    int height = Math.max(Math.max(own, room), words.size() * LEADING + 8);
    int top = y + (height - own) / 2;
    line(y, top);
    out.append(pieces.at("e" + element, svg(element, words, own, faults.in(element)), top));
    y += height;
    line(top + own, y);
  }

  /** Goes on where the last one ended. */
  private void line(int from, int to) {
    String end = "V" + from;
    if (from < to && lines.toString().endsWith(end)) {
      lines.replace(lines.length() - end.length(), lines.length(), "V" + to);
    } else if (from < to) {
      lines.append("M" + LINE + " ").append(from).append('V').append(to);
    }
  }

  private static int half(Symbol symbol) {
    return (int) Math.round(symbol.half() * SCALE);
  }

  private String svg(Element element, List<String> words, int height, String faults) {
    int middle = height / 2;
    return "<g" + (faults.isEmpty() ? "" : " data-f=\"" + faults + "\"") + ">"
        + (isWire(element) ? "<path d=\"M" + LINE + " 0v" + height + "\"/>" : "")
        + (element.symbol() == Symbol.WIRE ? "" : symbol(element.symbol(), middle))
        + text(words, PARTS, middle + 5 - (words.size() - 1) * LEADING / 2, "") + "</g>";
  }

  private String symbol(Symbol symbol, int middle) {
    String turn = symbol.isTurned() ? "rotate(90)" : "";
    return pieces.at("s" + symbol, "<path transform=\"translate(" + LINE + ")" + turn + "scale(" + SCALE + ")\" d=\""
        + symbol.uprightPath() + "\"/>", middle);
  }

  private static boolean isWire(Element element) {
    return element.symbol() == Symbol.WIRE || element.symbol() == Symbol.CABLE;
  }

  private static boolean isRail(Node node) {
    return node.kind() == Node.Kind.LEFT_RAIL || node.kind() == Node.Kind.RIGHT_RAIL;
  }

  private static int half(Node node) {
    return isRail(node) ? TAG : Math.max(TAG, words(node, POINTS).size() * LEADING / 2 + 4);
  }

  private static List<String> words(Node node, int width) {
    return Lettering.wrap(String.join(", ", node.names()), width == POINTS ? LETTERS : BOLD, width, MOST_LINES);
  }

  private static String text(List<String> lines, int x, int top, String kind) {
    var svg = new StringBuilder("<text" + (kind.isEmpty() ? "" : " class=\"" + kind + "\"") + " x=\"" + x + "\" y=\""
        + top + "\">");
    for (int i = 0; i < lines.size(); i++) {
      String words = Markup.escape(lines.get(i));
      svg.append(i == 0 ? words : "<tspan x=\"" + x + "\" dy=\"" + LEADING + "\">" + words + "</tspan>");
    }
    return svg.append("</text>").toString();
  }
}
