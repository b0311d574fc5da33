package rungbook.web.http;

import io.vertx.core.http.HttpServerResponse;

/** Headers that forbid a browser inline script, anything from elsewhere, and frames of other sites. */
final class SecurityHeaders {
  private SecurityHeaders() {}

  /** @param nonce the one of this answer's own style sheets */
  static void set(HttpServerResponse answer, String nonce) {
    answer.headers()
        .set("Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self' 'nonce-" + nonce
            + "'; img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; "
            + "frame-ancestors 'none'")
        .set("X-Content-Type-Options", "nosniff")
        .set("Referrer-Policy", "same-origin")
        .set("Cross-Origin-Resource-Policy", "same-origin")
        .set("Cross-Origin-Opener-Policy", "same-origin");
  }
}
