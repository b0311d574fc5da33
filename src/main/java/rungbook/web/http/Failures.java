package rungbook.web.http;

import io.netty.handler.codec.http.HttpResponseStatus;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import org.jboss.logging.Logger;
import rungbook.web.http.ProblemException.Report;

/**
 * Answers requests that fail before or outside any page or API, such as a body that is too large, in the shape of all
 * others.
 */
@ApplicationScoped
public class Failures {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final Set<HttpMethod> SAFE = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
  private static final long CLOSED_AFTER_MILLIS = 1_000;
  private final ProblemWriter problems;

  Failures(ProblemWriter problems) {
    this.problems = problems;
  }

  void listen(@Observes Router router) {
    router.route().order(Integer.MIN_VALUE).failureHandler(this::answer);
  }

  private void answer(RoutingContext request) {
    if (request.response().ended() || request.response().headWritten()) {
      request.next();
    } else if (request.statusCode() >= 400 && request.statusCode() < 500) {
      answer(request, refused(request.statusCode()));
    } else {
      LOG.error("failed at " + request.normalizedPath(), request.failure());
      answer(request, ownMistake(SAFE.contains(request.request().method())));
    }
  }

  /** Writes the answer and ends it. The rest of the request's body is not read: the connection ends with the answer. */
  void answer(RoutingContext request, Report report) {
    var body = problems.write(report, request.normalizedPath(), request.request().getHeader("Accept"));
    if (request.get(LoopbackFilter.NONCE) == null) {
      SecurityHeaders.set(request.response(), "none"); // the request failed before it was inspected
    }
    var response = request.response().setStatusCode(report.status()).putHeader("Content-Type", body.mediaType());
    if (request.request().isEnded()) {
      response.end(body.text());
    } else {
      response.putHeader("Connection", "close").end(body.text()).onComplete(sent -> closeSoon(request));
    }
  }

  // closed at once, a client that still sends would lose the answer
  private static void closeSoon(RoutingContext request) {
    request.request().resume();
    request.vertx().setTimer(CLOSED_AFTER_MILLIS, timer -> request.request().connection().close());
  }

  /** A request that the protocol refuses, in words. */
  static Report refused(int status) {
    var title = HttpResponseStatus.valueOf(status).reasonPhrase();
    return switch (status) {
      case 404 -> report(404, title, "there is nothing at this address", "start from the library");
      case 405 ->
          report(405, title, "this address does not take this method", "see /api/openapi for the methods it takes");
      case 406 -> report(406, title, "there is no such form of it", "ask for one that /api/openapi names, or for */*");
      case 413 -> report(413, title, "the request is larger than the server takes in", "send less at once");
      case 415 -> report(415, title, "the body's media type is not one that this address takes",
          "send JSON as `application/json`; see /api/openapi");
      default -> report(status, title, "this request cannot be read", "compare it with /api/openapi");
    };
  }

  private static Report report(int status, String title, String detail, String hint) {
    return ProblemException.of(status, title, detail, hint).report();
  }

  /**
   * A fault of the program.
   *
   * @param safe whether the request only asked to read
   */
  public static Report ownMistake(boolean safe) {
    return safe
        ? report(500, "Rungbook failed", "Nothing was changed by this request",
            "try again; the program's log says what failed")
        : report(500, "Rungbook failed", "It is not certain whether the change was saved",
            "look at the document's history before you send it again; the program's log says what failed");
  }
}
