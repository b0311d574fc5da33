package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Lob;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import rungbook.store.document.KeptRecord;

/** A field record in the database; Hibernate never updates it. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
@Immutable
@Table(name = "field_record")
public class FieldRecordRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  public String recordId;
  public int saves;
  public boolean isShort;
  public String contentHash;
  public Instant receivedAt;
  @Lob
  public byte[] content;
  @OneToMany(mappedBy = "fieldRecord")
  @OrderBy("place")
  public List<RecordPackRow> packs;

  /** Those that no newer state of the same record has replaced: more saves, or as many and not the short form. */
  private static final String NEWEST = "not exists (select 1 from FieldRecordRow o where o.recordId = r.recordId and "
      + "(o.saves > r.saves or o.saves = r.saves and (r.isShort = true and o.isShort = false "
      + "or r.isShort = o.isShort and o.id > r.id)))";

  static Optional<FieldRecordRow> alike(String recordId, String contentHash) {
    return find("recordId = ?1 and contentHash = ?2", recordId, contentHash).firstResultOptional();
  }

  /** The newest state of each record, the last that came first. */
  static List<FieldRecordRow> newest(int most) {
    return FieldRecordRow.<FieldRecordRow>find("from FieldRecordRow r where " + NEWEST + " order by r.id desc")
        .page(0, most).list();
  }

  /** The same of the records that followed a tree. */
  static List<FieldRecordRow> newest(String tree, int most) {
    return FieldRecordRow.<FieldRecordRow>find("from FieldRecordRow r where " + NEWEST
        + " and exists (select 1 from RecordPackRow p where p.fieldRecord = r and p.tree = ?1) order by r.id desc",
        tree)
        .page(0, most).list();
  }

  KeptRecord toRecord() {
    return new KeptRecord(id, recordId, receivedAt, packs.stream().map(RecordPackRow::toPack).toList(), content);
  }
}
