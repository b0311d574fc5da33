package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.KeptRecord.IssuedPack;

/** A pack that was handed out. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
@Immutable
@Table(name = "issued_pack")
public class IssuedPackRow extends PanacheEntityBase {
  @Id
  public String digest;
  public String path;
  public int revision;
  public Instant issuedAt;

  static IssuedPackRow of(String digest, IssuedPack pack, Instant at) {
    var row = new IssuedPackRow();
    row.digest = digest;
    row.path = pack.path().text();
    row.revision = pack.revision();
    row.issuedAt = at;
    return row;
  }

  /** @param digest hexadecimal digits, all or the first of them */
  static Optional<IssuedPack> find(String digest) {
    return IssuedPackRow.<IssuedPackRow>find("digest like ?1", digest + "%").firstResultOptional()
        .map(row -> new IssuedPack(new DocumentPath(row.path), row.revision));
  }
}
