package rungbook.web.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;

/** The cookie that remembers the author's name. */
public final class AuthorCookie {
  public static final String NAME = "rungbook-author";

  private AuthorCookie() {}

  /** The name in the cookie; empty where its value cannot be read: any other program on this machine may set it. */
  public static String name(String value) {
    try {
      return URLDecoder.decode(value, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notPercentEncoded) {
      return "";
    }
  }
}
