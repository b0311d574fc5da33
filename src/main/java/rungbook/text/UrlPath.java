package rungbook.text;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Paths in addresses, percent-encoded (RFC 3986). */
public final class UrlPath {

  private UrlPath() {}

  /** A whole path: each part encoded, its slashes kept. */
  public static String of(String path) {
    return part(path).replace("%2F", "/");
  }

  /** One part of a path; a slash in it is encoded too. */
  public static String part(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
