package rungbook.ladder;

import static rungbook.ladder.Sheet.px;

import java.util.List;
import java.util.Set;
import rungbook.text.Lettering;

/**
 * Writes a ladder as SVG for a width. A rung that is too long goes on in the next line. Rails at line voltage are thick
 * and say so.
 */
public final class LadderDrawing {

  /** The width of a page on a screen of 320 px without its margins, in pixels. */
  public static final int NARROW = 256;

  private static final double LEFT = 4;
  private static final double INSIDE = 12;
  private static final double HEAD = 20;
  private static final double SYMBOL = 22;
  private static final double BELOW = 27;
  private static final double GAP = 14;

  private final double right;
  private final Set<String> withCurrent;
  private final Sheet sheet = new Sheet();
  private double y = 4;

  private LadderDrawing(double width, Set<String> withCurrent) {
    this.right = width - LEFT;
    this.withCurrent = withCurrent;
  }

  /**
   * @param width in pixels at which its letters are as large as those of a page
   * @param withCurrent the keys of the parts that a current passes; their rungs say so
   */
  public static String of(Ladder ladder, int width, Set<String> withCurrent) {
    var drawing = new LadderDrawing(width, withCurrent);
    ladder.blocks().forEach(drawing::block);
    return drawing.sheet.page(width, drawing.y, RungWords.of(ladder));
  }

  private void block(VoltageBlock block) {
    List<String> title = Lettering.wrap(block.title() + (block.isLine() ? ", line voltage" : ""), 15 * ElementCell.BOLD,
        right - LEFT, 3);
    sheet.text(title, LEFT, y + 16, "t", "start");
    y += title.size() * ElementCell.LINE + 14;
    railNames(block);
    double top = y;
    block.rungs().forEach(this::rung);
    rail(LEFT, top, block.isLine());
    if (!block.right().equals(block.left())) {
      rail(right, top, block.isLine());
    }
    y += 2 * GAP;
  }

  private void railNames(VoltageBlock block) {
    double half = (right - LEFT) / 2 - 6;
    List<String> left = wrapped(block.left(), half);
    List<String> rightNames = block.right().equals(block.left()) ? List.of() : wrapped(block.right(), half);
    sheet.text(left, LEFT, y + 12, "n", "start");
    sheet.text(rightNames, right, y + 12, "n", "end");
    y += Math.max(left.size(), rightNames.size()) * ElementCell.LINE + 4;
  }

  private static List<String> wrapped(Node rail, double widthPx) {
    String joints = rail.joints().isEmpty() ? "" : " (" + String.join(", ", rail.joints()) + ")";
    return Lettering.wrap(String.join(", ", rail.names()) + joints, ElementCell.SMALL, widthPx, 12);
  }

  private void rail(double x, double top, boolean isLine) {
    sheet.path("M" + px(x) + " " + px(top) + "V" + px(y), isLine ? "6" : "3", isLine ? "hot" : "rail");
  }

  private void rung(Rung rung) {
    RungLines lines = RungLines.of(rung, right - LEFT - 2 * INSIDE - 6);
    boolean hasCurrent = rung.elements().stream().anyMatch(element -> withCurrent.contains(element.part()));
    String stroke = hasCurrent ? "4" : Sheet.THIN;
    head(rung, hasCurrent);
    for (int i = 0; i < lines.lines().size(); i++) {
      line(lines, i, stroke);
    }
  }

  private void head(Rung rung, boolean hasCurrent) {
    String from = rung.from() == 0 ? "" : ", from rung " + rung.from();
    String to = rung.to() == 0 ? "" : rung.to() == rung.from() ? " and back to it" : ", to rung " + rung.to();
    List<String> head = Lettering.wrap(rung.number() + "  " + rung.name() + from + to + (hasCurrent ? ": current" : ""),
        14 * ElementCell.BOLD, right - LEFT - 2 * INSIDE, 3);
    sheet.text(head, LEFT + INSIDE, y + HEAD, "h", "start");
    y += HEAD + head.size() * ElementCell.LINE - 4;
  }

  private void line(RungLines lines, int number, String stroke) {
    List<ElementCell> cells = lines.lines().get(number);
    boolean isFirst = number == 0;
    boolean isLast = number == lines.lines().size() - 1;
    double above = RungLines.above(cells);
    double level = y + above + SYMBOL;
    double x = LEFT + INSIDE;
    if (isFirst) {
      begin(lines, x, level, stroke);
    } else {
      sheet.path("M" + px(x - 4) + " " + px(y) + "V" + px(level) + "H" + px(x), stroke, "ink");
    }
    double spare = isLast ? spare(lines.rung(), cells) : 0;
    for (ElementCell cell : cells) {
      if (cell.element().isLoad()) {
        sheet.path("M" + px(x) + " " + px(level) + "h" + px(spare), stroke, "ink");
        x += spare;
        spare = 0;
      }
      cell(cell, x, level, stroke);
      x += cell.width();
    }
    int below = Math.max(RungLines.below(cells), isFirst ? lines.start().size() : 0);
    y = level + BELOW - 4 + below * ElementCell.LINE + GAP / 2;
    if (isLast) {
      end(lines.rung(), x, level, stroke);
    } else {
      double turn = right - INSIDE + 4;
      sheet.path("M" + px(x) + " " + px(level) + "H" + px(turn) + "V" + px(y) + "H" + px(LEFT + INSIDE - 4), stroke,
          "ink");
      y += 2;
    }
  }

  /** A load is at the right rail, as drawings of the trade have it. */
  private double spare(Rung rung, List<ElementCell> cells) {
    boolean isAtRail = rung.nodes().get(rung.nodes().size() - 1).kind() == Node.Kind.RIGHT_RAIL;
    return isAtRail ? Math.max(0, right - INSIDE - LEFT - INSIDE - RungLines.width(cells)) : 0;
  }

  private void begin(RungLines lines, double x, double level, String stroke) {
    Node first = lines.rung().nodes().get(0);
    if (first.kind() == Node.Kind.LEFT_RAIL) {
      sheet.path("M" + px(LEFT) + " " + px(level) + "H" + px(x), stroke, "ink");
    } else {
      mark(first, x, level);
      sheet.text(lines.start(), x - 4, level + BELOW, "n", "start");
    }
  }

  private void cell(ElementCell cell, double x, double level, String stroke) {
    double middle = x + cell.width() / 2;
    double half = cell.element().symbol().half();
    sheet.path("M" + px(x) + " " + px(level) + "H" + px(middle - half) + "M" + px(middle + half) + " " + px(level) + "H"
        + px(x + cell.width()), stroke, "ink");
    sheet.symbol(cell.element().symbol(), middle, level, stroke);
    double top = level - SYMBOL - (cell.name().size() + cell.note().size() - 1) * ElementCell.LINE;
    sheet.text(cell.name(), middle, top, "b", "middle");
    sheet.text(cell.note(), middle, top + cell.name().size() * ElementCell.LINE, "n", "middle");
    sheet.dot(x + cell.width(), level);
    sheet.text(cell.node(), x + cell.width(), level + BELOW, "n", "middle");
  }

  private void end(Rung rung, double x, double level, String stroke) {
    Node last = rung.nodes().get(rung.nodes().size() - 1);
    if (last.kind() == Node.Kind.RIGHT_RAIL) {
      sheet.path("M" + px(x) + " " + px(level) + "H" + px(right), stroke, "ink");
    } else {
      mark(last, x, level);
    }
  }

  private void mark(Node node, double x, double level) {
    sheet.dot(x, level);
    if (node.kind() == Node.Kind.GROUND) {
      sheet.path("M" + px(x) + " " + px(level) + "h14m0-9v18m4-14v10m4-7v4", Sheet.THIN, "ink");
    }
  }
}
