package rungbook.pack.book;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The anchors of a chapter: those of a pack's page in a form that is a name in XML too. */
final class Anchors {

  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*+)\"");

  private Anchors() {}

  /** A name begins with a letter and has no colon (Namespaces in XML 1.0, section 3); a slug has no period. */
  static String of(String id) {
    return "s." + id.replace(':', '.');
  }

  /** All those of a page. Quotes in its text are escaped, so that no text looks like an attribute. */
  static Set<String> in(String html) {
    return ID.matcher(html).results().map(id -> of(id.group(1))).collect(Collectors.toUnmodifiableSet());
  }

  /** The anchor that a link names: a link in prose has its fragment percent-encoded. */
  static String linked(String fragment) {
    try {
      return of(URLDecoder.decode(fragment.replace("+", "%2B"), StandardCharsets.UTF_8));
    } catch (IllegalArgumentException noEncoding) {
      return of(fragment);
    }
  }
}
