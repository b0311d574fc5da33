package rungbook.pack.drawing;

import java.util.List;
import java.util.Map;

/** The meter, and what it is set to. */
final class MeterPiece {

  private static final int PADDING = 12;
  private static final int SIDE = 4;

  private MeterPiece() {}

  static Piece of(String setting, int width) {
    var svg = new Svg();
    List<String> lines = Words.lines(setting, width - 2 * SIDE);
    int height = lines.size() * Words.LINE + PADDING;
    svg.rect("", 2, 0, width - 4, height);
    for (int line = 0; line < lines.size(); line++) {
      svg.text("b", width / 2, PADDING / 2 + 16 + line * Words.LINE, lines.get(line));
    }
    return new Piece(width, height + 2, svg.toString(), Map.of());
  }
}
