package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.NameKey;
import rungbook.store.document.Refused;

/** A document and the number of its newest revision. {@code version} lets one of two racing saves win. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
@Table(name = "document")
public class DocumentRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  public String path;
  /** Unique; null only where an older program let in a name that collides with one before it. */
  public @Nullable String nameKey;
  public int head;
  @Version
  public int version;

  static Optional<DocumentRow> at(DocumentPath path) {
    return find("path", path.text()).firstResultOptional();
  }

  /**
   * Inserts a document. A row with the same path is no collision: another transaction inserted it since the caller
   * looked, so the insert breaks the unique constraint and the caller tries again.
   *
   * @throws Refused when the name would be the same file as another document's on some computer
   */
  static DocumentRow insert(DocumentPath path) {
    var key = NameKey.ofNew(path);
    colliding(path, key).ifPresent(other -> {
      throw new Refused("`" + path + "` and `" + other.path + "` would be the same file on some computers",
          "use the name `" + other.path
              + "`, which is in the library or in its history, "
              + "or choose one that differs in more than case and spaces");
    });
    var row = new DocumentRow();
    row.path = path.text();
    row.nameKey = key.text();
    row.persist();
    return row;
  }

  private static Optional<DocumentRow> colliding(DocumentPath path, NameKey key) {
    return find("nameKey = ?1 and path <> ?2", key.text(), path.text()).firstResultOptional();
  }

  /** Gives their keys to documents from before there were any; of those that collide, the oldest has it. */
  static void fillKeys() {
    var without = DocumentRow.<DocumentRow>list("nameKey is null", Sort.by("id"));
    if (without.isEmpty()) {
      return;
    }
    var taken = new HashSet<>(
        DocumentRow.<DocumentRow>list("nameKey is not null").stream().map(row -> row.nameKey).toList());
    for (var row : without) {
      var key = NameKey.of(new DocumentPath(row.path)).text();
      row.nameKey = taken.add(key) ? key : null;
    }
  }

  static List<DocumentRow> all() {
    return listAll();
  }
}
