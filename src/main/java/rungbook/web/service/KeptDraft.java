package rungbook.web.service;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rungbook.store.document.Draft;
import rungbook.text.UrlPath;

/**
 * @param text null for a picture
 * @param href where its bytes are
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KeptDraft(long id, int basedOn, String author, String message, Instant at, @Nullable String text,
    String href) {
  public static KeptDraft of(Draft d) {
    return new KeptDraft(d.id(), d.basedOn(), d.author(), d.message(), d.at(), d.path().isPicture() ? null : d.text(),
        "/api/files/" + UrlPath.of(d.path().text()) + "?draft=" + d.id());
  }
}
