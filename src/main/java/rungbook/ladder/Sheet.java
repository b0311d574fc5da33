package rungbook.ladder;

import java.util.List;
import rungbook.text.Markup;

/** Writes the elements of a drawing. Colors are the tokens of the page around it. */
final class Sheet {

  static final String THIN = "2";

  private final StringBuilder out = new StringBuilder();

  /** A line from point to point. */
  void path(String data, String strokeWidth, String color) {
    out.append("<path d=\"").append(data).append("\" stroke-width=\"").append(strokeWidth).append("\" stroke=\"var(--")
        .append(color).append(")\"/>");
  }

  /** The dot where elements meet. */
  void dot(double x, double y) {
    out.append("<circle cx=\"").append(px(x)).append("\" cy=\"").append(px(y))
        .append("\" r=\"3.5\" fill=\"var(--ink)\" stroke=\"none\"/>");
  }

  void symbol(Symbol symbol, double x, double y, String strokeWidth) {
    out.append("<path transform=\"translate(").append(px(x)).append(' ').append(px(y)).append(")\" d=\"")
        .append(symbol.path()).append("\" stroke-width=\"").append(strokeWidth).append("\"/>");
  }

  /**
   * Lines of text below one another.
   *
   * @param y of the first baseline
   * @param anchor {@code start}, {@code middle} or {@code end}
   */
  void text(List<String> lines, double x, double y, String kind, String anchor) {
    double at = y;
    for (String line : lines) {
      out.append("<text class=\"").append(kind).append("\" x=\"").append(px(x)).append("\" y=\"").append(px(at))
          .append("\" text-anchor=\"").append(anchor).append("\">").append(Markup.escape(line)).append("</text>");
      at += ElementCell.LINE;
    }
  }

  /** The whole drawing; {@code words} say what it shows to people who cannot see it. */
  String page(double width, double height, String words) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"circuit\" role=\"img\" aria-label=\""
        + Markup.escape(words) + "\" width=\"" + px(width) + "\" height=\"" + px(height) + "\" viewBox=\"0 0 "
        + px(width) + " " + px(height) + "\" fill=\"none\" stroke=\"var(--ink)\" stroke-linecap=\"round\">" + out
        + "</svg>";
  }

  static String px(double value) {
    long tenths = Math.round(value * 10);
    return tenths % 10 == 0 ? Long.toString(tenths / 10) : tenths / 10.0 + "";
  }
}
