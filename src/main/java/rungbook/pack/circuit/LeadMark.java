package rungbook.pack.circuit;

import java.util.List;
import java.util.stream.IntStream;
import rungbook.system.Terminal;
import rungbook.text.Markup;

/** The tag of a lead on a rung. */
record LeadMark(Terminal terminal, String letters, String kind, String words) {

  /** What the mark of a lead on ground adds to a picture. */
  static final int GROUND_HEIGHT = 42;

  private static final int HEIGHT = 22;
  private static final int LETTER = 10;

  /** @param leads red, then black; a clamp has one jaw */
  static List<LeadMark> of(List<Terminal> leads) {
    return leads.size() == 1 ? List.of(new LeadMark(leads.get(0), "CLAMP", "black", "clamp at"))
        : IntStream.range(0, leads.size()).mapToObj(lead -> lead == 0
            ? new LeadMark(leads.get(0), "RED", "red", "red lead on")
            : new LeadMark(leads.get(lead), "BLACK", "black", "black lead on")).toList();
  }

  private int width() {
    return letters.length() * LETTER + 6;
  }

  /** @param isBeside whether the other lead is at the same height */
  String at(int y, boolean isBeside) {
    return tag(Upright.LINE + (isBeside ? width() + 2 : 0), y);
  }

  private String tag(int x, int y) {
    return "<rect class=\"tag " + kind + "\" x=\"" + (x - width() / 2) + "\" y=\"" + (y - HEIGHT / 2) + "\" width=\""
        + width() + "\" height=\"" + HEIGHT + "\"/><text class=\"letters\" x=\"" + x + "\" y=\"" + (y + 5) + "\">"
        + letters + "</text>";
  }

  /** Below the rung, since ground belongs to no rung. */
  String atGround(int y, String name) {
    return tag(Upright.LINE, y + HEIGHT / 2) + "<path d=\"M" + Upright.LINE + " " + (y + HEIGHT)
        + "v6m-10 0h20m-16 5h12m-8 5h4\"/><text x=\"" + (Upright.LINE + 36) + "\" y=\"" + (y + 16) + "\">"
        + Markup.escape(name) + "</text>";
  }
}
