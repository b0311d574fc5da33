package rungbook.store.document;

import java.time.Instant;
import rungbook.store.document.Chain.Hash;

/**
 * One saved state of a document. Revisions are never changed; number 1 is the first.
 *
 * @param parent the hash of the revision before it, {@link Hash#NONE} for the first
 * @param at when it was saved, to the millisecond
 * @param content the bytes as saved; empty when {@code change} is {@link Change#REMOVED}
 */
public record Revision(DocumentPath path, int number, Change change, String author, String message,
    Instant at, Hash parent, Hash hash, byte[] content) {

  /** What a revision did to its document. */
  public enum Change { WRITTEN, REMOVED }

  public boolean isThere() {
    return change == Change.WRITTEN;
  }

  /** Whether all of it is what its hash was made of; false when something else changed the database. */
  public boolean isIntact() {
    return Chain.isIntact(this);
  }

  /** The content as text; only sensible for a Markdown document. */
  public String text() {
    return new String(content, java.nio.charset.StandardCharsets.UTF_8);
  }
}
