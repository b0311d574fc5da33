package rungbook.pack.drawing;

import java.util.List;
import java.util.Map;

/** The name of what is drawn, and its voltage: line voltage with a bolt on the color of danger. */
final class HeadingPiece {

  private static final int BADGE = 28;
  private static final int BOLT = 24;

  private HeadingPiece() {}

  /** @param voltage such as {@code 24 V}; empty if unknown */
  static Piece of(String title, String voltage, boolean isLine, int width) {
    var svg = new Svg();
    List<String> lines = title.isEmpty() ? List.of() : Words.regularLines(title, width);
    int y = 0;
    for (String line : lines) {
      svg.text("", width / 2, y + 16, line);
      y += Words.LINE;
    }
    if (!voltage.isEmpty()) {
      voltage(svg, voltage, isLine, width / 2, y + 2);
      y += BADGE + 8;
    }
    return new Piece(Math.max(width, Words.widest(lines)), y, svg.toString(), Map.of());
  }

  private static void voltage(Svg svg, String voltage, boolean isLine, int middle, int top) {
    if (!isLine) {
      svg.text("", middle, top + 17, voltage);
      return;
    }
    int width = Words.width(voltage) + BOLT + 16;
    int left = middle - width / 2;
    svg.rect("volts", left, top, width, BADGE);
    svg.path("bolt", "M%d %dl-9 13h6l-3 9l10-13h-6l4-9z", left + 17, top + 3);
    svg.text("volts", left + BOLT + 4 + Words.width(voltage) / 2, top + 20, voltage);
  }
}
