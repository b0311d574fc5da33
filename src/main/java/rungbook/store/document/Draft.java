package rungbook.store.document;

import java.nio.charset.StandardCharsets;
import java.time.Instant;

/** A text whose save conflicted with another one. It is kept until somebody discards it. */
public record Draft(long id, DocumentPath path, int basedOn, String author, String message, Instant at,
    byte[] content) {
  public String text() {
    return new String(content, StandardCharsets.UTF_8);
  }
}
