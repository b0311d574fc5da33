package rungbook.report;

/** The width of characters on a terminal, and which of them are safe to print. */
public final class Columns {

  /**
   * The first and last code points of ranges that take two columns: East Asian wide and full width, and pictographs
   * (Unicode 15, UAX 11).
   */
  private static final int[][] WIDE = {
      {0x1100, 0x115F}, {0x231A, 0x231B}, {0x2329, 0x232A}, {0x23E9, 0x23EC}, {0x25FD, 0x25FE}, {0x2614, 0x2615},
      {0x2648, 0x2653}, {0x26A1, 0x26A1}, {0x26BD, 0x26BE}, {0x26D4, 0x26D4}, {0x2705, 0x2705}, {0x274C, 0x274C},
      {0x2E80, 0x303E}, {0x3041, 0x33FF}, {0x3400, 0x4DBF}, {0x4E00, 0x9FFF}, {0xA000, 0xA4CF}, {0xA960, 0xA97C},
      {0xAC00, 0xD7A3}, {0xF900, 0xFAFF}, {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F},
      {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x1FA70, 0x1FAFF}, {0x20000, 0x3FFFD}};

  private static final int UNPRINTABLE = 0xFFFD;

  private Columns() {}

  static int of(int codePoint) {
    if (codePoint < 0x300) {
      return 1;
    }
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || codePoint == 0x200D) {
      return 0;
    }
    for (int[] range : WIDE) {
      if (codePoint >= range[0] && codePoint <= range[1]) {
        return 2;
      }
    }
    return 1;
  }

  static int of(String text) {
    int columns = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      columns += of(text.codePointAt(i));
    }
    return columns;
  }

  /**
   * A character that is safe to print: terminal control and directional characters in a file could overwrite the
   * report.
   */
  static int printable(int codePoint) {
    return isSteering(codePoint) ? UNPRINTABLE : codePoint;
  }

  public static String printable(String text) {
    return text.codePoints().noneMatch(Columns::isSteering) ? text
        : text.codePoints().map(Columns::printable)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
  }

  private static boolean isSteering(int codePoint) {
    return Character.isISOControl(codePoint) || (codePoint >= 0x202A && codePoint <= 0x202E)
        || (codePoint >= 0x2066 && codePoint <= 0x2069)
        || codePoint == 0x2028 || codePoint == 0x2029 || (codePoint >= 0xD800 && codePoint <= 0xDFFF);
  }
}
