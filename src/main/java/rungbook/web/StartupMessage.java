package rungbook.web;

import io.quarkus.vertx.http.HttpServerStart;
import io.vertx.core.http.HttpServer;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import org.jboss.logging.Logger;

/** Says where the library can be opened, once it can. */
@ApplicationScoped
class StartupMessage {
  private static final Logger LOG = Logger.getLogger("rungbook");

  void print(@ObservesAsync HttpServerStart started) {
    LOG.infof("open http://127.0.0.1:%d in a browser; Ctrl-C stops it", started.options().getPort());
  }
}
