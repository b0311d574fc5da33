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

  /** Some faces are wider than the one that widths are from; bold letters are wider in any. */
  private static final double LETTERS = 15 * 1.12;
  private static final double BOLD = 16 * 1.25;
  private static final int POINTS = 90;
  private static final int PARTS = 150;
  private static final int MOST_LINES = 12;
  private static final int WIRE = 24;
  private static final int PART = 40;
  private static final double SCALE = 0.8;

  /** Half of what is left for the tag of a lead. */
  private static final int TAG = 13;

  private final Pieces pieces;
  private final StringBuilder out = new StringBuilder();
  private final List<Integer> levels = new ArrayList<>();
  private int y;

  /** Writes what is drawn in several places, or refers to it. */
  interface Pieces {

    /** @param svg at the height 0 */
    String at(String key, String svg, int x, int y);
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
    return new Drawn(drawing.out.toString(), drawing.y + 4, drawing.levels);
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
        out.append("<path d=\"M").append(LINE).append(' ').append(y).append("v12m-10 0h20m-16 5h12m-8 5h4\"/>");
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
    String svg = "<circle class=\"dot\" cx=\"" + LINE + "\" r=\"4\"/>"
        + text(words, POINTS, 5 - (words.size() - 1) * LEADING / 2, "point");
    out.append(pieces.at("n" + node, svg, 0, y));
    levels.add(y);
  }

  private void element(Element element, Faults faults, int room) {
    List<String> words = Lettering.wrap(element.name(), BOLD, WIDTH - PARTS - 2, MOST_LINES);
    int height = Math.max(isWire(element) ? WIRE : PART, words.size() * LEADING + 4);
    int spare = Math.max(0, room - height);
    if (spare > 0) {
      out.append("<path d=\"M").append(LINE).append(' ').append(y).append('v').append(spare / 2).append("m0 ")
          .append(height).append('v').append(spare - spare / 2).append("\"/>");
    }
    out.append(pieces.at("e" + element, svg(element, words, height, faults.in(element)), 0, y + spare / 2));
    y += height + spare;
  }

  private String svg(Element element, List<String> words, int height, String faults) {
    int middle = height / 2;
    int half = (int) Math.round(element.symbol().half() * SCALE);
    String line = isWire(element) ? "M" + LINE + " 0v" + height
        : "M" + LINE + " 0V" + (middle - half) + "m0 " + 2 * half + "V" + height;
    return "<g" + (faults.isEmpty() ? "" : " data-f=\"" + faults + "\"") + "><path d=\"" + line + "\"/>"
        + (element.symbol() == Symbol.WIRE ? "" : symbol(element.symbol(), middle))
        + text(words, PARTS, middle + 5 - (words.size() - 1) * LEADING / 2, "") + "</g>";
  }

  private String symbol(Symbol symbol, int middle) {
    String turn = symbol.isTurned() ? "rotate(90)" : "";
    return pieces.at("s" + symbol, "<path transform=\"" + turn + "scale(" + SCALE + ")\" d=\"" + symbol.uprightPath()
        + "\"/>", LINE, middle);
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
    var svg = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      svg.append(kind.isEmpty() ? "<text" : "<text class=\"" + kind + "\"").append(" x=\"").append(x).append("\" y=\"")
          .append(top + i * LEADING).append("\">").append(Markup.escape(lines.get(i))).append("</text>");
    }
    return svg.toString();
  }
}
