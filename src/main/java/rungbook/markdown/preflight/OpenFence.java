package rungbook.markdown.preflight;

/**
 * Tracks whether a line is inside a fenced block, where the paragraph limit does not apply. When in doubt, it is not: a
 * block in a quote or a list, or after HTML (which can contain a fence), does not count.
 */
final class OpenFence {

  private char mark;
  private int length;
  private boolean afterHtml;

  boolean isOpen() {
    return length > 0;
  }

  /**
   * Whether the line opens, closes, or is inside a fenced block.
   *
   * @param inner where the line's text starts
   */
  boolean holds(String text, int start, int inner, int end) {
    int run = run(text, inner, end);
    if (isOpen()) {
      if (run >= length && text.charAt(inner) == mark && text.substring(inner + run, end).isBlank()) {
        length = 0;
      }
      return true;
    }
    afterHtml |= inner < end && text.charAt(inner) == '<';
    if (afterHtml || run < 3 || !isSpaces(text, start, inner)
        || (text.charAt(inner) == '`' && text.lastIndexOf('`', end - 1) >= inner + run)) {
      return false;
    }
    mark = text.charAt(inner);
    length = run;
    return true;
  }

  private static boolean isSpaces(String text, int start, int inner) {
    boolean spaces = inner - start <= 3;
    for (int i = start; i < inner && spaces; i++) {
      spaces = text.charAt(i) == ' ';
    }
    return spaces;
  }

  /** The number of equal fence characters at the start of the line. */
  private static int run(String text, int inner, int end) {
    int at = inner;
    while (at < end && (text.charAt(inner) == '`' || text.charAt(inner) == '~')
        && text.charAt(at) == text.charAt(inner)) {
      at++;
    }
    return at - inner;
  }
}
