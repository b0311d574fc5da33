package rungbook.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Writes library paths into addresses. */
final class Urls {
  private Urls() {
  }

  /** A path with every part percent-encoded and its slashes kept. */
  static String path(String path) {
    return URLEncoder.encode(path, StandardCharsets.UTF_8).replace("+", "%20").replace("%2F", "/");
  }
}
