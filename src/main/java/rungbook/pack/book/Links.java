package rungbook.pack.book;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.text.UrlPath;

/**
 * Where the links of one chapter lead.
 *
 * @param own the chapter's file
 * @param anchors of each chapter, by file
 */
record Links(String own, Map<String, Set<String>> anchors) {

  /** Schemes without a host. */
  private static final Set<String> OTHER_SCHEMES = Set.of("mailto", "tel");

  /** @return empty for a link that leads nowhere: its words stay, as plain text */
  Optional<String> of(String written) {
    int hash = written.indexOf('#');
    String file = hash < 0 ? written : written.substring(0, hash);
    String chapter = file.isEmpty() ? own : file;
    if (!anchors.containsKey(chapter)) {
      return web(written);
    }
    String anchor = hash < 0 ? "" : Anchors.linked(written.substring(hash + 1));
    boolean known = anchors.get(chapter).contains(anchor);
    return file.isEmpty() && !known ? Optional.empty()
        : Optional.of(file + (known ? "#" + UrlPath.part(anchor) : ""));
  }

  /** An address of the web, of mail or of a phone, if it can be read as one. */
  private static Optional<String> web(String written) {
    try {
      URI address = new URI(written);
      boolean web = written.matches("https?://.*") && address.getHost() != null;
      return web || OTHER_SCHEMES.contains(String.valueOf(address.getScheme())) ? Optional.of(written)
          : Optional.empty();
    } catch (URISyntaxException unreadable) {
      return Optional.empty();
    }
  }
}
