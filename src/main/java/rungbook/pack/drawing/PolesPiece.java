package rungbook.pack.drawing;

import java.util.Map;
import rungbook.system.Terminal;

/** Draws two poles with their four corners, and the coil that moves them if there is one. */
final class PolesPiece {

  private static final int LANE = 8;
  private static final int EDGE = 20;
  private static final int COLUMN = EDGE + 26;
  private static final int TOP = 24;
  private static final int BOTTOM = TOP + 88;
  private static final int MIDDLE = (TOP + BOTTOM) / 2;
  private static final int NARROWEST = 112;

  private final Subject.Poles poles;
  private final TerminalMarks marks;
  private final Svg svg = new Svg();
  private final int width;

  private PolesPiece(Subject.Poles poles, TerminalMarks marks) {
    this.poles = poles;
    this.marks = marks;
    int labels = Math.max(marks.width(poles.left().a()) + marks.width(poles.right().a()),
        marks.width(poles.left().b()) + marks.width(poles.right().b()));
    this.width = 2 * COLUMN + Math.max(NARROWEST, labels + 44);
  }

  static Piece of(Subject.Poles poles, TerminalMarks marks) {
    return new PolesPiece(poles, marks).draw();
  }

  private Piece draw() {
    svg.rect(marks.volts().isLine(poles.left().a()) ? "line" : "", EDGE, 4, width - 2 * EDGE, BOTTOM + TOP - 8);
    link();
    int right = width - COLUMN;
    pole(COLUMN, " rotate(90) scale(1 -1)");
    pole(right, " rotate(90)");
    corner(poles.left().a(), COLUMN, TOP);
    corner(poles.right().a(), right, TOP);
    corner(poles.left().b(), COLUMN, BOTTOM);
    corner(poles.right().b(), right, BOTTOM);
    Map<Terminal, Piece.Anchor> anchors = Map.of(poles.left().a(), new Piece.Anchor(COLUMN, TOP, LANE),
        poles.right().a(), new Piece.Anchor(right, TOP, width - LANE),
        poles.left().b(), Piece.Anchor.straight(COLUMN, BOTTOM), poles.right().b(),
        Piece.Anchor.straight(right, BOTTOM));
    marks.screws(svg, anchors);
    return new Piece(width, BOTTOM + TOP, svg.toString(), anchors);
  }

  /** @param turn so that an open blade is toward the edge */
  private void pole(int x, String turn) {
    int half = poles.symbol().width() / 2;
    svg.path("", "M%d %dV%dM%d %dV%d", x, TOP + TerminalMarks.RADIUS, MIDDLE - half, x, BOTTOM - TerminalMarks.RADIUS,
        MIDDLE + half);
    svg.symbol(poles.symbol().path(), poles.symbol().placed(x, MIDDLE) + turn);
  }

  /** What moves both poles together. */
  private void link() {
    svg.path("link", "M%d %dH%d", COLUMN + 12, MIDDLE, width - COLUMN - 12);
    if (poles.hasCoil()) {
      svg.path("part", "M%d %da14 14 0 1 0 28 0a14 14 0 1 0-28 0", width / 2 - 14, MIDDLE);
    } else {
      svg.text("", width / 2, MIDDLE - 8, "line side").text("", width / 2, MIDDLE + 20, "load side");
    }
  }

  /** The label is toward the middle of the part. */
  private void corner(Terminal terminal, int x, int y) {
    int toward = TerminalMarks.RADIUS + 6 + marks.width(terminal) / 2;
    int lines = marks.lines(terminal).size();
    marks.label(svg, terminal, x < width / 2 ? x + toward : x - toward,
        y == TOP ? TOP - 10 : BOTTOM + 12 - lines * Words.LINE);
  }
}
