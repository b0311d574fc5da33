package rungbook.pack.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import rungbook.text.Markup;

/** Writes the elements of a drawing. */
final class Svg {

  private final StringBuilder out = new StringBuilder();

  /** @param kind the class of the path; empty for the drawing's common line */
  Svg path(String kind, String data, Object... values) {
    return data.isEmpty() ? this : add("<path%s d=\"%s\"/>", kind(kind), form(data, values));
  }

  Svg rect(String kind, int x, int y, int width, int height) {
    return add("<rect%s x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>", kind(kind), x, y, width, height);
  }

  /** @param x of its middle */
  Svg text(String kind, int x, int y, String text) {
    return add("<text%s x=\"%d\" y=\"%d\">%s</text>", kind(kind), x, y, Markup.escape(text));
  }

  /** @param path around the middle of a symbol */
  Svg symbol(String path, String transform) {
    return add("<path transform=\"%s\" d=\"%s\"/>", transform, path);
  }

  Svg piece(Piece piece, int x, int y) {
    return add("<g transform=\"translate(%d %d)\">%s</g>", x, y, piece.svg());
  }

  /** The whole drawing, of a size that makes its letters those of the text around it; a wider one can be scrolled. */
  String page(int width, int height, String words) {
    return form("<div class=\"leads\"><svg role=\"img\" aria-label=\"%s\" viewBox=\"0 0 %d %d\" width=\"%sem\">"
        + "%s</svg></div>", Markup.escape(words), width, height, ems(width), out);
  }

  private static String ems(int units) {
    return BigDecimal.valueOf(units).divide(BigDecimal.valueOf(Words.LETTERS), 2, RoundingMode.HALF_UP)
        .stripTrailingZeros().toPlainString();
  }

  private Svg add(String form, Object... values) {
    out.append(form(form, values));
    return this;
  }

  private static String kind(String name) {
    return name.isEmpty() ? "" : " class=\"" + name.strip() + "\"";
  }

  /** The same digits in every locale. */
  private static String form(String form, Object... values) {
    return values.length == 0 ? form : String.format(Locale.ROOT, form, values);
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
