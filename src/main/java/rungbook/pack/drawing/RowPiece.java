package rungbook.pack.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.ladder.Symbol;
import rungbook.system.Terminal;

/** Draws terminals in a row: a strip with its screws, or a part with its symbol between its ends. */
final class RowPiece {

  private static final int NARROWEST_CELL = 25;
  private static final int FRAME = 36;

  private final Subject.Row row;
  private final TerminalMarks marks;
  private final Svg svg = new Svg();
  private final StringBuilder dividers = new StringBuilder();
  private final Map<Terminal, Piece.Anchor> anchors = new HashMap<>();
  private final int frameTop;
  private final int screwY;

  private RowPiece(Subject.Row row, TerminalMarks marks) {
    this.row = row;
    this.marks = marks;
    int lines = row.terminals().stream().mapToInt(terminal -> marks.lines(terminal).size()).max().orElse(1);
    this.frameTop = lines * Words.LINE + 4;
    this.screwY = frameTop + FRAME / 2;
  }

  static Piece of(Subject.Row row, TerminalMarks marks) {
    return new RowPiece(row, marks).draw();
  }

  private Piece draw() {
    int width = 2 * padding() + row.terminals().stream().mapToInt(this::cellWidth).sum()
        + row.between().stream().mapToInt(Symbol::width).sum();
    if (row.isEnclosed()) {
      svg.rect((row.terminals().stream().anyMatch(marks.volts()::isLine) ? "line" : "")
          + (row.isStrip() ? "" : " round"), 0, frameTop, width, FRAME);
    }
    cells();
    svg.path("", dividers.toString());
    marks.screws(svg, anchors);
    return new Piece(width, frameTop + FRAME, svg.toString(), anchors);
  }

  /** Of a part with round ends. */
  private int padding() {
    return row.isEnclosed() && !row.isStrip() ? 8 : 0;
  }

  private int cellWidth(Terminal terminal) {
    return Math.max(NARROWEST_CELL, marks.width(terminal) + 8);
  }

  private void cells() {
    List<Terminal> terminals = row.terminals();
    int left = padding();
    for (int i = 0; i < terminals.size(); i++) {
      int x = left + cellWidth(terminals.get(i)) / 2;
      left += cellWidth(terminals.get(i));
      if (i < row.between().size()) {
        between(row.between().get(i), x, left, left + cellWidth(terminals.get(i + 1)) / 2);
        left += row.between().get(i).width();
      }
      terminal(terminals.get(i), x);
    }
  }

  private void terminal(Terminal terminal, int x) {
    marks.label(svg, terminal, x, frameTop - 4 - marks.lines(terminal).size() * Words.LINE);
    anchors.put(terminal, Piece.Anchor.straight(x, screwY));
  }

  /** @param nextX how far the next terminal is from the cell's edge, without the symbol */
  private void between(Symbol symbol, int x, int edge, int nextX) {
    switch (symbol) {
      case GAP -> {}
      case NEIGHBOR -> dividers.append("M" + edge + " " + frameTop + "v" + FRAME);
      default -> {
        svg.path("", "M%d %dH%dM%d %dH%d", x + TerminalMarks.RADIUS, screwY, edge, edge + symbol.width(), screwY,
            nextX + symbol.width() - TerminalMarks.RADIUS);
        svg.symbol(symbol.path(), symbol.placed(edge + symbol.width() / 2, screwY));
      }
    }
  }
}
