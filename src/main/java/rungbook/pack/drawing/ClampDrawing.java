package rungbook.pack.drawing;

import java.util.List;

/** A clamp takes no leads: its jaw goes round one conductor. */
final class ClampDrawing {

  private static final int NARROWEST = 148;

  private ClampDrawing() {}

  static String of(String conductor, String meter, String words) {
    List<String> lines = Words.lines(conductor, NARROWEST);
    int width = Math.max(NARROWEST, Words.widest(lines) + 16);
    var svg = new Svg();
    for (int line = 0; line < lines.size(); line++) {
      svg.text("b", width / 2, 18 + line * Words.LINE, lines.get(line));
    }
    int wire = lines.size() * Words.LINE + 34;
    String path = "M6 " + wire + "H" + (width - 6);
    svg.path("casing", path).path("black", path);
    svg.path("jaw", "M%d %da24 24 0 1 1 28 0", width / 2 - 14, wire + 20);
    Piece piece = MeterPiece.of(meter, width);
    svg.piece(piece, 0, wire + 20);
    return svg.page(width, wire + 20 + piece.height(), words + ".");
  }
}
