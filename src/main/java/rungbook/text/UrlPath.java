package rungbook.text;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Percent-encodes URL paths (RFC 3986). */
public final class UrlPath {

  private UrlPath() {}

  /** Encodes a path and keeps its slashes. */
  public static String of(String path) {
    return part(path).replace("%2F", "/");
  }

  /** Encodes one path segment, slashes included. */
  public static String part(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
