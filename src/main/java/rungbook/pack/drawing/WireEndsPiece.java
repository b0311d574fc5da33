package rungbook.pack.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.system.Terminal;

/** Draws the spliced conductors of a cable: the jacket, the wires with their letters, a wire nut on each end. */
final class WireEndsPiece {

  private static final int NARROWEST_CELL = 56;
  private static final int JACKET = 16;
  private static final int FLAG = 28;
  private static final int NUT = 66;
  private static final int TIP = 92;

  private WireEndsPiece() {}

  static Piece of(Subject.WireEnds ends, TerminalMarks marks) {
    var svg = new Svg();
    var anchors = new HashMap<Terminal, Piece.Anchor>();
    int left = 0;
    for (Terminal end : ends.terminals()) {
      int cell = Math.max(NARROWEST_CELL, marks.width(end) + 24);
      wire(svg, end, marks, left + cell / 2);
      anchors.put(end, Piece.Anchor.straight(left + cell / 2, TIP));
      left += cell;
    }
    svg.rect("jacket", 0, 0, left, JACKET);
    return new Piece(left, TIP + 4, svg.toString(), anchors);
  }

  private static void wire(Svg svg, Terminal end, TerminalMarks marks, int x) {
    int flag = marks.width(end) + 12;
    svg.path("", "M%d %dV%d", x, JACKET, NUT);
    svg.rect("", x - flag / 2, FLAG - 3, flag, 26);
    List<String> lines = marks.lines(end);
    marks.label(svg, end, x, lines.size() > 1 ? JACKET : FLAG);
    svg.path("part", "M%d %dh24l-7 %dh-10z", x - 12, NUT, TIP - NUT);
  }
}
