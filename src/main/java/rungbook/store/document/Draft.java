package rungbook.store.document;

import java.time.Instant;

/** A text that lost the race to be saved. It is kept until somebody puts it away. */
public record Draft(long id, DocumentPath path, int basedOn, String author, String message, Instant at,
    byte[] content) {
  public String text() {
    return new String(content, java.nio.charset.StandardCharsets.UTF_8);
  }
}
