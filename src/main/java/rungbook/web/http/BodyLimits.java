package rungbook.web.http;

import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.concurrent.Semaphore;
import rungbook.store.document.StoreLimits;

/**
 * Bounds what requests bring: how large a body may be on its route, and how many large ones are worked on at once, so
 * that no number of requests fills the memory.
 */
@ApplicationScoped
class BodyLimits {
  /** The key of the most bytes that the request's body may have. */
  static final String ROUTE_LIMIT = "rungbook.body-limit";
  /** JSON writes some characters of a text of 4 MB in two bytes or six. */
  static final int JSON_BYTES = 8 << 20;
  /** A zip that holds as much as an import may, hardly compressed. */
  static final int IMPORT_BYTES = 160 << 20;
  private static final int PICTURE_BYTES = 2 * StoreLimits.PICTURE;
  private static final int SMALL_BYTES = 256 << 10;
  /** What a body of 8 MB costs at most until it is answered: its bytes, its text, and what is made of it. */
  private static final int MEMORY_OF_A_LARGE_BODY = 96 << 20;
  /** Each holds one of the framework's 200 workers until it is there; the rest is left for readers. */
  private static final int MOST_SMALL = 64;
  private static final int BEFORE_THE_SERVERS_OWN_LIMIT = 900;
  private static final int AFTER_THE_SERVERS_OWN_LIMIT = 1;
  private final Semaphore large = new Semaphore(permits(Runtime.getRuntime().maxMemory()));
  private final Semaphore small = new Semaphore(MOST_SMALL);
  private final Semaphore imports = new Semaphore(1);
  private final Failures failures;

  BodyLimits(Failures failures) {
    this.failures = failures;
  }

  static int permits(long memoryBytes) {
    return (int) Math.max(1, Math.min(16, memoryBytes / 2 / MEMORY_OF_A_LARGE_BODY));
  }

  void listen(@Observes Filters filters) {
    filters.register(this::admit, BEFORE_THE_SERVERS_OWN_LIMIT);
    filters.register(BodyLimits::limit, AFTER_THE_SERVERS_OWN_LIMIT);
  }

  private void admit(RoutingContext request) {
    var most = limit(request.normalizedPath());
    var length = length(request.request(), most);
    request.put(ROUTE_LIMIT, most);
    if (length > most) {
      failures.answer(request, tooLarge(most).report());
    } else if (length == 0) {
      request.next();
    } else {
      admit(request, permits(request.normalizedPath(), length));
    }
  }

  private Semaphore permits(String path, long length) {
    if (length <= SMALL_BYTES) {
      return small;
    }
    return takesFiles(path) ? imports : large;
  }

  static ProblemException tooLarge(long mostBytes) {
    return ProblemException.tooLarge("the request is larger than " + (mostBytes >> 20) + " MB",
        mostBytes == IMPORT_BYTES ? "import the library in parts" : "split the text, or save the picture smaller");
  }

  private void admit(RoutingContext request, Semaphore permits) {
    if (permits.tryAcquire()) {
      request.addEndHandler(ended -> permits.release());
      request.next();
    } else {
      request.response().putHeader("Retry-After", "1");
      failures.answer(request,
          ProblemException.of(503, "Too much at once", "other requests with a body are still being worked on",
              "send it again in a moment").report());
    }
  }

  // the framework's own limit ends a body without an answer in words: it is the backstop for what LimitedBody does not
  // read
  private static void limit(RoutingContext request) {
    request.put(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY, limit(request.normalizedPath()) + SMALL_BYTES);
    request.next();
  }

  private static long limit(String path) {
    if (takesFiles(path)) {
      return IMPORT_BYTES;
    }
    return path.startsWith("/api/files/") ? PICTURE_BYTES : JSON_BYTES;
  }

  private static boolean takesFiles(String path) {
    return path.equals("/transfer") || path.equals("/api/import") || path.equals("/verify");
  }

  /** The body's length in bytes; for one that does not say it, the most that its route takes. */
  private static long length(HttpServerRequest request, long most) {
    if (request.getHeader("Transfer-Encoding") != null) {
      return most;
    }
    var length = request.getHeader("Content-Length");
    try {
      return length == null ? 0 : Long.parseLong(length.strip());
    } catch (NumberFormatException unreadable) {
      return Long.MAX_VALUE;
    }
  }
}
