package rungbook.web.service;

import com.fasterxml.jackson.annotation.JsonInclude;
import rungbook.store.document.Revision;

/** @param text null for a picture: {@code /api/files} has its bytes */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DocumentText(DocumentEntry entry, String text) {
  public static DocumentText of(Revision revision) {
    return new DocumentText(DocumentEntry.of(revision), revision.path().isPicture() ? null : revision.text());
  }
}
