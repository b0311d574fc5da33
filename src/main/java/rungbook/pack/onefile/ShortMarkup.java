package rungbook.pack.onefile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * HTML without what a browser puts back by itself: quotes around a plain value (HTML, 13.1.2.3), and end tags that
 * what follows implies (13.1.2.4). The HTML comes from this program alone, so that each angle bracket in it belongs to
 * a tag. In a library these are a tenth of the file.
 */
final class ShortMarkup {

  /** Not before a slash, which would become part of the value. */
  private static final Pattern QUOTED = Pattern.compile("=\"([^\\s\"'=<>`/&]++)\"(?=[ >])");
  private static final Pattern TAG = Pattern.compile("<[a-z][^<>]*>");

  private static final Pattern IMPLIED = Pattern.compile("</li>\\s*(?=<li[ >]|</[uo]l>)"
      + "|</p>\\s*(?=<(?:p|div|ul|ol|dl|details|section|h[1-6]|table|pre|blockquote)[ >]|</(?:div|section|details|li)>)"
      + "|</d[td]>\\s*(?=<d[td]>|</div>)");

  /** A line end before or after a block shows nowhere, and would be a piece of text of its own. */
  private static final Pattern LINE_END = Pattern
      .compile("\\n(?=</?(?:p|div|section|ul|ol|li|h[1-6]|details|dl|dd|table|thead|tbody|tr|pre|blockquote)[ >])");

  private ShortMarkup() {}

  /** A single space after an end tag shows where a style runs two lines together; a line end never does. */
  static String of(String html) {
    String bare = TAG.matcher(html).replaceAll(tag -> Matcher.quoteReplacement(QUOTED.matcher(tag.group())
        .replaceAll("=$1")));
    return IMPLIED.matcher(LINE_END.matcher(bare).replaceAll(""))
        .replaceAll(end -> end.group().endsWith("> ") ? " " : "");
  }
}
