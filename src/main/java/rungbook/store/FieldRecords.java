package rungbook.store;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import rungbook.store.document.KeptRecord;
import rungbook.store.document.KeptRecord.IssuedPack;
import rungbook.store.document.KeptRecord.KeptPack;
import rungbook.text.Sha256;

/** Keeps field records as they were received, and which packs were handed out. */
@ApplicationScoped
public class FieldRecords {
  private final Store store;

  FieldRecords(Store store) {
    this.store = store;
  }

  /**
   * A record that arrives.
   *
   * @param packs without what this server knows of them
   */
  public record Arrival(String recordId, int saves, boolean isShort, List<KeptPack> packs, byte[] content) {}

  /** @param isNew whether the same content was not there before */
  public record Kept(KeptRecord kept, boolean isNew) {}

  /** Keeps a record; on the disk when this returns. The same content again changes nothing. */
  public Kept receive(Arrival arrival) {
    var hash = Sha256.hex(arrival.content());
    return store.written(() -> FieldRecordRow.alike(arrival.recordId(), hash)
        .map(row -> new Kept(row.toRecord(), false)).orElseGet(() -> new Kept(insert(arrival, hash), true)));
  }

  private static KeptRecord insert(Arrival arrival, String hash) {
    var row = new FieldRecordRow();
    row.recordId = arrival.recordId();
    row.saves = arrival.saves();
    row.isShort = arrival.isShort();
    row.contentHash = hash;
    row.receivedAt = now();
    row.content = arrival.content();
    row.persistAndFlush();
    var packs = arrival.packs().stream()
        .map(pack -> new KeptPack(pack.tree(), pack.digest(), pack.saidRevision(), IssuedPackRow.find(pack.digest())))
        .toList();
    for (int place = 0; place < packs.size(); place++) {
      RecordPackRow.of(row, place, packs.get(place)).persist();
    }
    return new KeptRecord(row.id, row.recordId, row.receivedAt, packs, row.content);
  }

  /** The newest state of each record, the last that came first. */
  public List<KeptRecord> newest(int most) {
    return ReadAttempt.run(() -> FieldRecordRow.newest(most).stream().map(FieldRecordRow::toRecord).toList());
  }

  /**
   * The same of the records that followed a tree.
   *
   * @param tree its id
   */
  public List<KeptRecord> newest(String tree, int most) {
    return ReadAttempt.run(() -> FieldRecordRow.newest(tree, most).stream().map(FieldRecordRow::toRecord).toList());
  }

  public Optional<KeptRecord> find(long id) {
    return ReadAttempt
        .run(() -> FieldRecordRow.<FieldRecordRow>findByIdOptional(id).map(FieldRecordRow::toRecord));
  }

  /**
   * Remembers that a pack was handed out.
   *
   * @param digest all 64 digits
   */
  public void issued(String digest, IssuedPack pack) {
    if (ReadAttempt.run(() -> IssuedPackRow.find(digest)).isEmpty()) {
      store.written(() -> {
        if (IssuedPackRow.find(digest).isEmpty()) {
          IssuedPackRow.of(digest, pack, now()).persistAndFlush();
        }
        return digest;
      });
    }
  }

  private static Instant now() {
    return Instant.now().truncatedTo(ChronoUnit.MILLIS);
  }
}
