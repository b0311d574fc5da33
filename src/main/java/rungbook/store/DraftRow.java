package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Lob;
import jakarta.persistence.Table;
import java.time.Instant;

/** A draft as it lies in the database. */
@Entity
@Table(name = "draft")
public class DraftRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  public String path;
  public int basedOn;
  public String author;
  public String message;
  public Instant keptAt;
  @Lob
  public byte[] content;

  static DraftRow of(Save save, Instant at) {
    var row = new DraftRow();
    row.path = save.path().text();
    row.basedOn = save.basedOn();
    row.author = save.author();
    row.message = save.message();
    row.keptAt = at;
    row.content = save.content();
    return row;
  }

  Draft toDraft() {
    return new Draft(id, new DocumentPath(path), basedOn, author, message, keptAt, content);
  }
}
