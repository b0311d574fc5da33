package rungbook.store.document;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A field record as it was received.
 *
 * @param recordId the id that the phone gave it; a record that comes again, with more in it, has the same
 * @param packs those that were followed, in the record's order
 */
public record KeptRecord(long id, String recordId, Instant receivedAt, List<KeptPack> packs, byte[] content) {

  /**
   * A pack that a record says was followed.
   *
   * @param digest all of its digits, or the first 24
   * @param saidRevision as the pack shows it
   * @param issued the pack that this server handed out under that digest; empty if it never did
   */
  public record KeptPack(String tree, String digest, String saidRevision, Optional<IssuedPack> issued) {}

  /** A pack that this server handed out. */
  public record IssuedPack(DocumentPath path, int revision) {}

  public String text() {
    return new String(content, StandardCharsets.UTF_8);
  }
}
