package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Lob;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Draft;
import rungbook.store.document.Save;

/** A draft in the database. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
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

  static Optional<DraftRow> of(DocumentPath path, long id) {
    return find("path = ?1 and id = ?2", path.text(), id).firstResultOptional();
  }

  /** The same text, kept before: a client that tries again makes no second draft. */
  static Optional<DraftRow> alike(Save save) {
    return DraftRow
        .<DraftRow>list("path = ?1 and basedOn = ?2 and author = ?3", save.path().text(), save.basedOn(), save.author())
        .stream().filter(row -> Arrays.equals(row.content, save.content())).findFirst();
  }

  Draft toDraft() {
    return new Draft(id, new DocumentPath(path), basedOn, author, message, keptAt, content);
  }
}
