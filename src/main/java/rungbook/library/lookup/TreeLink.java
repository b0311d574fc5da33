package rungbook.library.lookup;

import java.util.ArrayList;
import java.util.List;
import rungbook.source.Span;

/**
 * A link from a text to a tree of its library, found without parsing it: every link counts, also one that is no way on.
 *
 * @param span the tree's id, without {@code .md}
 */
public record TreeLink(Span span) {

  private static final String OPENS = "](";
  private static final String ENDS = ".md";

  /** In characters; longer than any name of a file. */
  private static final int LONGEST_NAME = 200;

  /** Those of a text, in its order. */
  public static List<TreeLink> in(String words) {
    List<TreeLink> links = new ArrayList<>();
    for (int end = words.indexOf(ENDS); end >= 0; end = words.indexOf(ENDS, end + 1)) {
      int start = nameStart(words, end);
      if (start < end && words.startsWith(OPENS, start - OPENS.length()) && isAddressEnd(words, end + ENDS.length())) {
        links.add(new TreeLink(new Span(start, end)));
      }
    }
    return links;
  }

  private static int nameStart(String words, int end) {
    int start = end;
    while (start > 0 && end - start < LONGEST_NAME && "()#/ \t\n\f\r".indexOf(words.charAt(start - 1)) < 0) {
      start--;
    }
    return start;
  }

  private static boolean isAddressEnd(String words, int at) {
    return at < words.length() && (words.charAt(at) == '#' || words.charAt(at) == ')');
  }
}
