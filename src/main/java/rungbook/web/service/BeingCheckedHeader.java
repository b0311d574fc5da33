package rungbook.web.service;

import io.quarkus.vertx.http.runtime.filters.Filters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Tells programs by a header that an answer may be older than the newest save. */
@ApplicationScoped
class BeingCheckedHeader {
  private static final String NAME = "Rungbook-Being-Checked";
  private static final int AFTER_THE_REFUSALS = 2;
  private final CompiledLibrary library;

  BeingCheckedHeader(CompiledLibrary library) {
    this.library = library;
  }

  void register(@Observes Filters filters) {
    filters.register(request -> {
      if (library.isBehind()) {
        request.response().putHeader(NAME, "true");
      }
      request.next();
    }, AFTER_THE_REFUSALS);
  }
}
