package rungbook.web.http;

import io.vertx.ext.web.RoutingContext;
import java.util.function.Consumer;

/**
 * Who waits for an answer that takes long.
 *
 * @param author the name in the author's cookie; empty where there is none
 * @param whenGone takes what to do when the connection ends before the answer was sent
 */
public record Asker(String author, Consumer<Runnable> whenGone) {

  public static Asker of(RoutingContext request) {
    var cookie = request.request().getCookie(AuthorCookie.NAME);
    return new Asker(cookie == null ? "" : AuthorCookie.name(cookie.getValue()), action -> whenGone(request, action));
  }

  private static void whenGone(RoutingContext request, Runnable action) {
    request.addEndHandler(ended -> {
      if (ended.failed()) {
        action.run();
      }
    });
    if (request.response().closed() && !request.response().ended()) {
      action.run(); // the connection ended before the handler was there
    }
  }
}
