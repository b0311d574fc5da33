package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.KeptRecord.IssuedPack;
import rungbook.store.document.KeptRecord.KeptPack;

/** A pack that a field record names. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
@Immutable
@Table(name = "field_record_pack")
public class RecordPackRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  public FieldRecordRow fieldRecord;
  public int place;
  public String tree;
  public String digest;
  public String saidRevision;
  public @Nullable String path;
  public @Nullable Integer revision;

  static RecordPackRow of(FieldRecordRow fieldRecord, int place, KeptPack pack) {
    var row = new RecordPackRow();
    row.fieldRecord = fieldRecord;
    row.place = place;
    row.tree = pack.tree();
    row.digest = pack.digest();
    row.saidRevision = pack.saidRevision();
    row.path = pack.issued().map(issued -> issued.path().text()).orElse(null);
    row.revision = pack.issued().map(IssuedPack::revision).orElse(null);
    return row;
  }

  KeptPack toPack() {
    return new KeptPack(tree, digest, saidRevision, Optional.ofNullable(path)
        .map(known -> new IssuedPack(new DocumentPath(known), revision == null ? 0 : revision)));
  }
}
