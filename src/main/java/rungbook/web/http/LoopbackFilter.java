package rungbook.web.http;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Set;

/**
 * Filters every request while there are no accounts: only pages and programs of this machine pass.
 *
 * <p>DNS rebinding reaches a loopback server with a foreign {@code Host}; another site's page posts to it with a
 * foreign {@code Origin}. Pages load nothing from elsewhere and run no inline script.
 */
@ApplicationScoped
public class LoopbackFilter {
  /** The key of the request's nonce for the editor's style sheets. */
  public static final String NONCE = "rungbook.nonce";
  private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");
  private static final Set<HttpMethod> SAFE = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
  private static final int BEFORE_EVERYTHING = 1000;
  private final SecureRandom random = new SecureRandom();
  private final Failures failures;

  LoopbackFilter(Failures failures) {
    this.failures = failures;
  }

  void register(@Observes Filters filters) {
    filters.register(this::inspect, BEFORE_EVERYTHING);
  }

  private void inspect(RoutingContext request) {
    var nonce = new byte[16];
    random.nextBytes(nonce);
    request.put(NONCE, HexFormat.of().formatHex(nonce));
    SecurityHeaders.set(request.response(), request.get(NONCE));
    if (request.request().headers().getAll("Host").size() > 1) {
      refuse(request, 400, "Two hosts", "the request names two hosts", "send one `Host` header");
    } else if (!LOOPBACK.contains(hostOf(request.request()))) {
      refuse(request, 421, "Not this server", "this server answers to its own address only",
          "open http://127.0.0.1 with the port it printed at its start");
    } else if (isForeignWrite(request.request())) {
      refuse(request, 403, "Not allowed", "another site's page tried to change the library",
          "do it from Rungbook's own pages");
    } else {
      request.next();
    }
  }

  private static String hostOf(HttpServerRequest request) {
    var authority = request.authority();
    var host = authority == null ? "" : authority.host().toLowerCase(Locale.ROOT);
    if (host.contains(":") && !host.startsWith("[")) {
      return "[" + host + "]";
    }
    // a period ends an absolute name (RFC 1034, 3.1)
    return host.endsWith(".") ? host.substring(0, host.length() - 1) : host;
  }

  private static boolean isForeignWrite(HttpServerRequest request) {
    if (SAFE.contains(request.method())) {
      return false;
    }
    var site = request.getHeader("Sec-Fetch-Site");
    var origin = request.getHeader("Origin");
    return (site != null && !site.equals("same-origin") && !site.equals("none"))
        || (origin != null && !origin.equalsIgnoreCase("http://" + request.authority()));
  }

  private void refuse(RoutingContext request, int status, String title, String detail, String hint) {
    failures.answer(request, ProblemException.of(status, title, detail, hint).report());
  }
}
