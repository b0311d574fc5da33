package rungbook.markdown;

/**
 * Keeps track of whether a line stands in a fenced block, where it belongs to no paragraph however long the block is.
 * When in doubt it does not: a block in a quote or a list, or after HTML, which may swallow a fence, gets no such
 * licence.
 */
final class OpenFence {

  private char mark;
  private int length;
  private boolean afterHtml;

  boolean isOpen() {
    return length > 0;
  }

  /**
   * Whether the line opens, closes or stands in a fenced block.
   *
   * @param inner where its text starts
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
        || text.charAt(inner) == '`' && text.lastIndexOf('`', end - 1) >= inner + run) {
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

  /** How many equal fence marks the line starts with. */
  private static int run(String text, int inner, int end) {
    int at = inner;
    while (at < end && (text.charAt(inner) == '`' || text.charAt(inner) == '~')
        && text.charAt(at) == text.charAt(inner)) {
      at++;
    }
    return at - inner;
  }
}
