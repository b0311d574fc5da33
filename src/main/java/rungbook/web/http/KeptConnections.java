package rungbook.web.http;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpConnection;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Bounds how many connections stay open between requests. One beyond that is answered as any other, and closed after
 * the answer. The framework's own limit would close it without an answer.
 */
@ApplicationScoped
class KeptConnections {
  private static final int MOST_KEPT = 512;
  private static final int BEFORE_EVERYTHING = 1001;
  private final Set<HttpConnection> open = ConcurrentHashMap.newKeySet();

  void register(@Observes Filters filters) {
    filters.register(this::count, BEFORE_EVERYTHING);
  }

  private void count(RoutingContext request) {
    var connection = request.request().connection();
    if (open.add(connection)) {
      connection.closeHandler(closed -> open.remove(connection));
    }
    // the streams of HTTP/2 share a connection, which one of them must not close
    if (open.size() > MOST_KEPT && request.request().version() != HttpVersion.HTTP_2) {
      request.response().putHeader("Connection", "close");
      request.addEndHandler(answered -> connection.close());
    }
    request.next();
  }
}
