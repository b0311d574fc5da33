package rungbook.rules.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rungbook.source.Span;

/**
 * Splits text into words, in one pass. A hyphen or an apostrophe between letters belongs to the word: {@code won't},
 * {@code cut-out}. What looks like a file name, an address or a code is no word.
 */
final class WordScanner {

  private final String text;
  private final List<Word> found = new ArrayList<>();
  private int group;

  private WordScanner(String text) {
    this.text = text;
  }

  /**
   * A word.
   *
   * @param key lower case, with plain apostrophes
   * @param group equal for words with nothing but blanks between them
   */
  record Word(String key, Span span, int group) {}

  /** The words in a part of a text. */
  static List<Word> in(String text, Span span) {
    var words = new WordScanner(text);
    int at = span.start();
    while (at < span.end()) {
      int end = at;
      while (end < span.end() && !Character.isWhitespace(text.charAt(end))) {
        end++;
      }
      words.take(at, end);
      at = end + 1;
    }
    return words.found;
  }

  /** Takes what is between two blanks. */
  private void take(int start, int end) {
    if (isName(start, end)) {
      group++;
      return;
    }
    int at = start;
    while (at < end) {
      int from = at;
      while (at < end && isInWord(at, start, end)) {
        at++;
      }
      if (at > from) {
        found.add(new Word(key(text.substring(from, at)), new Span(from, at), group));
      } else {
        group++;
        at++;
      }
    }
  }

  /** A dot between letters or digits, or a sign that no sentence has. */
  private boolean isName(int start, int end) {
    for (int at = start; at < end; at++) {
      char c = text.charAt(at);
      boolean inner = at > start && at + 1 < end && isLetter(at - 1) && isLetter(at + 1);
      if (c == '_' || c == '@' || c == '\\' || c == '#' || (c == '.' && inner)
          || (c == ':' && text.startsWith("//", at + 1))) {
        return true;
      }
    }
    return false;
  }

  private boolean isInWord(int at, int start, int end) {
    char c = text.charAt(at);
    return isLetter(at)
        || ((c == '-' || c == '\'' || c == '\u2019') && at > start && at + 1 < end && isLetter(at - 1)
            && isLetter(at + 1));
  }

  private boolean isLetter(int at) {
    char c = text.charAt(at);
    return Character.isLetterOrDigit(c) || Character.isSurrogate(c)
        || Character.getType(c) == Character.NON_SPACING_MARK;
  }

  private static String key(String word) {
    return word.toLowerCase(Locale.ROOT).replace('\u2019', '\'');
  }
}
