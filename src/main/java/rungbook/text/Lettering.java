package rungbook.text;

import java.util.ArrayList;
import java.util.List;

/** Measures text without a font: the server has none, and a text must have the same size everywhere. */
public final class Lettering {
  // widths of common sans-serif faces in thousandths of the letter height, rounded up
  private static final int NARROW = 330;
  private static final int USUAL = 560;
  private static final int WIDE = 860;
  private static final int FULL = 1000;

  private Lettering() {}

  /** The width of a line, in pixels. */
  public static double width(String text, double heightPx) {
    return text.codePoints().map(Lettering::thousandths).sum() * heightPx / 1000;
  }

  private static int thousandths(int c) {
    if ("iljtfrI.,:;'|!()[] -".indexOf(c) >= 0) {
      return NARROW;
    }
    if (c > 0x2E80) {
      return FULL;
    }
    return "mwMW@%".indexOf(c) >= 0 || Character.isUpperCase(c) ? WIDE - (Character.isUpperCase(c) ? 160 : 0) : USUAL;
  }

  /**
   * Breaks a text into lines of at most the given width, between words where possible. Text after the last line is
   * replaced by an ellipsis.
   */
  public static List<String> wrap(String text, double heightPx, double widthPx, int mostLines) {
    var lines = new ArrayList<String>();
    var rest = text.strip();
    while (!rest.isEmpty() && lines.size() < mostLines) {
      var cut = fitting(rest, heightPx, widthPx);
      var isLast = lines.size() == mostLines - 1 && cut < rest.length();
      lines.add(isLast ? shortened(rest, heightPx, widthPx) : rest.substring(0, cut).strip());
      rest = rest.substring(cut).strip();
    }
    return lines;
  }

  private static int fitting(String text, double heightPx, double widthPx) {
    if (width(text, heightPx) <= widthPx) {
      return text.length();
    }
    var end = longest(text, heightPx, widthPx);
    var space = text.lastIndexOf(' ', end);
    return space > 0 ? space : end;
  }

  private static String shortened(String text, double heightPx, double widthPx) {
    return text.substring(0, longest(text, heightPx, widthPx - heightPx)).strip() + "…";
  }

  private static int longest(String text, double heightPx, double widthPx) {
    var end = 1;
    while (end < text.length() && width(text.substring(0, end + 1), heightPx) <= widthPx) {
      end++;
    }
    return Character.isHighSurrogate(text.charAt(end - 1)) && end < text.length() ? end + 1 : end;
  }
}
