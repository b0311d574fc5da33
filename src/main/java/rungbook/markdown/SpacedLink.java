package rungbook.markdown;

/**
 * Finds {@code [label](two words)}: it looks like a link but is not one, because its address contains a space. Makes
 * one pass, since a line can be as long as the text.
 */
final class SpacedLink {

  private static final int NONE = Integer.MAX_VALUE;

  private final String line;
  private int space = -1;
  private int close = -1;

  private SpacedLink(String line) {
    this.line = line;
  }

  static boolean isIn(String line) {
    return new SpacedLink(line).find();
  }

  private boolean find() {
    boolean open = false;
    for (int at = 0; at < line.length() && space != NONE && close != NONE; at++) {
      char mark = line.charAt(at);
      if (mark == ']' && open && line.startsWith("(", at + 1)) {
        space = next(' ', at + 2, space);
        close = next(')', at + 2, close);
        if (space < close && close != NONE) {
          return true;
        }
      }
      open = mark == '[' || (open && mark != ']');
    }
    return false;
  }

  /** The first occurrence of a mark at or after an offset. Reuses the last result if it is still ahead. */
  private int next(char mark, int from, int known) {
    int found = known >= from ? known : line.indexOf(mark, from);
    return found < 0 ? NONE : found;
  }
}
