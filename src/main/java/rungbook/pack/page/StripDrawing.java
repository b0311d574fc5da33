package rungbook.pack.page;

import java.util.List;
import java.util.Locale;
import rungbook.text.Markup;

/**
 * The terminal strip with the leads on it, as inline SVG. Which lead is which is said in letters; the red one is drawn
 * whole, the black one broken, so that it holds without color too.
 */
final class StripDrawing {

  private static final List<String> NAMES = List.of("RED", "BLACK");
  private static final int LINE = 20;
  private static final int STRIP = 44;
  private static final int LEADS = 74;
  private static final int METER = 46;

  private final TerminalStrip strip;
  /** The dividers, and the screws without a lead. */
  private final StringBuilder plain = new StringBuilder();
  private final StringBuilder svg = new StringBuilder();
  private final int stripTop;
  private final int meterTop;
  private int redX;
  private int blackX;

  private StripDrawing(TerminalStrip strip) {
    this.strip = strip;
    this.stripTop = strip.labelLines() * LINE + 6;
    this.meterTop = stripTop + STRIP + LEADS;
  }

  /**
   * @param words what the drawing shows, for people who cannot see it
   * @param meter what the meter is set to
   */
  static String of(TerminalStrip strip, String words, String meter) {
    StripDrawing drawing = new StripDrawing(strip);
    drawing.terminals();
    if (strip.cells().size() > 1) {
      drawing.leads();
    } else {
      drawing.jaw();
    }
    drawing.meter(meter);
    return "<svg class=\"strip\" role=\"img\" aria-label=\"" + Markup.escape(words) + "\" viewBox=\"0 0 "
        + TerminalStrip.WIDTH + " "
        + (drawing.meterTop + METER + 2) + "\">" + drawing.svg + "</svg>";
  }

  private void terminals() {
    int left = (TerminalStrip.WIDTH - Math.min(strip.width(), TerminalStrip.WIDTH)) / 2;
    int x = left;
    add("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>", left, stripTop, strip.width(), STRIP);
    for (TerminalStrip.Cell cell : strip.cells()) {
      terminal(cell, x);
      x += cell.width();
    }
    add("<path d=\"%s\"/>", plain);
  }

  private void terminal(TerminalStrip.Cell cell, int x) {
    int middle = x + cell.width() / 2;
    int screw = stripTop + STRIP / 2;
    List<String> lines = cell.lines();
    for (int line = 0; line < lines.size(); line++) {
      label(cell, middle, stripTop - 7 - (lines.size() - 1 - line) * LINE, lines.get(line));
    }
    plain.append(form("M%d %dv%d", x + cell.width(), stripTop, STRIP));
    if (cell.lead() < 0) {
      plain.append(form("M%d %da12 12 0 1 0 24 0a12 12 0 1 0-24 0m5 7l14-14", middle - 12, screw));
    } else {
      add("<circle cx=\"%d\" cy=\"%d\" r=\"12\"/><path class=\"slot\" d=\"M%d %dl14-14\"/>", middle, screw, middle - 7,
          screw + 7);
    }
    if (cell.lead() == 0) {
      redX = middle;
    } else if (cell.lead() == 1) {
      blackX = middle;
    }
  }

  /** The leads never cross: the left terminal's lead goes to the left of the meter. */
  private void leads() {
    boolean redLeft = redX <= blackX;
    lead(blackX, redLeft ? 205 : 75, 1);
    lead(redX, redLeft ? 75 : 205, 0);
  }

  private void lead(int from, int to, int lead) {
    int top = stripTop + STRIP / 2 + 4;
    String path = "M" + from + " " + top + "V" + (top + 34) + "C" + from + " " + (top + 62) + " " + to + " "
        + (top + 34) + " " + to + " " + meterTop;
    String color = NAMES.get(lead).toLowerCase(Locale.ROOT);
    add("<path class=\"casing\" d=\"%s\"/><path class=\"%s\" d=\"%s\"/>", path, color, path);
    add("<rect class=\"tag %s\" x=\"%d\" y=\"%d\" width=\"76\" height=\"24\" rx=\"3\"/>", color, to - 38,
        meterTop - 30);
    text(to, meterTop - 12, "letters", NAMES.get(lead));
  }

  /** A clamp takes no leads: its jaw goes round the one conductor. */
  private void jaw() {
    int y = stripTop + STRIP;
    add("<path class=\"casing\" d=\"M140 %dv%d\"/><path class=\"black\" d=\"M140 %dv%d\"/>", y, LEADS - 22, y,
        LEADS - 22);
    add("<path class=\"jaw\" d=\"M122 %da28 24 0 1 1 36 0\"/>", meterTop);
  }

  private void meter(String meter) {
    add("<rect class=\"meter\" x=\"10\" y=\"%d\" width=\"260\" height=\"%d\" rx=\"8\"/>", meterTop, METER);
    text(140, meterTop + 29, "", meter);
  }

  /** A word wider than its terminal is drawn narrower. */
  private void label(TerminalStrip.Cell cell, int x, int y, String line) {
    String fit = TerminalStrip.Cell.textWidth(line) < cell.width() ? ""
        : " textLength=\"" + (cell.width() - 6) + "\" lengthAdjust=\"spacingAndGlyphs\"";
    add("<text class=\"%s\" x=\"%d\" y=\"%d\"%s>%s</text>", cell.lead() < 0 ? "quiet" : "", x, y, fit,
        Markup.escape(line));
  }

  private void text(int x, int y, String kind, String text) {
    add("<text class=\"%s\" x=\"%d\" y=\"%d\">%s</text>", kind, x, y, Markup.escape(text));
  }

  private void add(String form, Object... values) {
    svg.append(form(form, values).replace(" class=\"\"", ""));
  }

  /** The same digits in every locale. */
  private static String form(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
