package rungbook.markdown;

import java.util.Locale;

/** A heading's id as common Markdown viewers generate it: lower case, spaces to hyphens, punctuation dropped. */
public final class Slug {

  private Slug() {}

  public static String of(String words) {
    var slug = new StringBuilder(words.length());
    words.strip().toLowerCase(Locale.ROOT).codePoints().forEach(c -> append(slug, c));
    return slug.toString();
  }

  private static void append(StringBuilder slug, int c) {
    if (c == ' ' || c == '\t') {
      slug.append('-');
    } else if (Character.isLetterOrDigit(c) || isMark(c) || c == '-' || c == '_') {
      slug.appendCodePoint(c);
    }
  }

  /** In many scripts vowel signs and accents are marks, not letters; without them a heading would lose its meaning. */
  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
  }
}
