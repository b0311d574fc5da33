package rungbook.pack.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.system.NominalVolts;
import rungbook.system.Terminal;

/** How the terminals of one subject look: their labels, round for control voltage, square for line voltage. */
record TerminalMarks(Map<Terminal, String> labels, List<Terminal> leads, NominalVolts volts) {

  /** Labels are broken at about this width. */
  private static final int LABEL_WIDTH = 76;

  static final int RADIUS = 10;

  private static final String SCREW = "a10 10 0 1 0 20 0a10 10 0 1 0-20 0m4 6l12-12";

  List<String> lines(Terminal terminal) {
    return Words.lines(labels.getOrDefault(terminal, terminal.point()), LABEL_WIDTH);
  }

  int width(Terminal terminal) {
    return Words.widest(lines(terminal));
  }

  /** @param top of the label's first line */
  void label(Svg svg, Terminal terminal, int x, int top) {
    List<String> lines = lines(terminal);
    for (int line = 0; line < lines.size(); line++) {
      svg.text(leads.contains(terminal) ? "b" : "", x, top + 16 + line * Words.LINE, lines.get(line));
    }
  }

  /** All of one kind in one path, which keeps a pack small. */
  void screws(Svg svg, Map<Terminal, Piece.Anchor> anchors) {
    var tabs = new StringBuilder();
    var screws = new StringBuilder();
    labels.keySet().forEach(terminal -> Optional.ofNullable(anchors.get(terminal)).ifPresent(at -> {
      if (volts.isLine(terminal)) {
        tabs.append("M").append(at.x() - RADIUS).append(' ').append(at.y() - RADIUS).append("h20v20h-20z");
      } else if (terminal.isGround()) {
        svg.path("", "M%d %dv12m-12 0h24m-20 6h16m-12 6h8", at.x(), at.y());
      } else {
        screws.append("M").append(at.x() - RADIUS).append(' ').append(at.y()).append(SCREW);
      }
    }));
    svg.path("tab", tabs.toString()).path("screw", screws.toString());
  }
}
