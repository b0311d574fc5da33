package rungbook.pack.drawing;

import java.util.HashMap;
import java.util.Map;
import rungbook.system.Terminal;

/** A part of a drawing: its size, its elements, and where leads touch it. */
record Piece(int width, int height, String svg, Map<Terminal, Anchor> anchors) {

  Piece {
    anchors = Map.copyOf(anchors);
  }

  /**
   * Where a lead touches a terminal.
   *
   * @param exitX where it runs down from there, beside the piece or straight
   */
  record Anchor(int x, int y, int exitX) {

    static Anchor straight(int x, int y) {
      return new Anchor(x, y, x);
    }

    Anchor moved(int right, int down) {
      return new Anchor(x + right, y + down, exitX + right);
    }
  }

  /** Where leads touch it when it is at a place of the drawing. */
  Map<Terminal, Anchor> anchorsAt(int x, int y) {
    var moved = new HashMap<Terminal, Anchor>();
    anchors.forEach((terminal, anchor) -> moved.put(terminal, anchor.moved(x, y)));
    return moved;
  }
}
