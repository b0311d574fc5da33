package rungbook.web;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import org.jboss.logging.Logger;

/** Prints the address of the library once the server listens. */
@ApplicationScoped
class StartupMessage {
  private static final Logger LOG = Logger.getLogger("rungbook");

  /** @param server knows the port that it got; with port 0, the event's options do not */
  void print(@ObservesAsync HttpServerStart started, HttpServer server) {
    LOG.infof("open http://127.0.0.1:%d in a browser; Ctrl-C stops it", server.getPort());
  }
}
