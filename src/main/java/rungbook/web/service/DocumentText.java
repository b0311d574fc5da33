package rungbook.web.service;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;
import rungbook.store.document.Revision;

/** @param text null for a picture: {@code /api/files} has its bytes */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DocumentText(DocumentEntry entry, @Nullable String text) {
  public static DocumentText of(Revision revision) {
    return new DocumentText(DocumentEntry.of(revision), revision.path().isPicture() ? null : revision.text());
  }
}
