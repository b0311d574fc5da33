package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.Optional;

/** A document and the number of its newest revision. {@code version} lets one of two racing saves win. */
@Entity
@Table(name = "document")
public class DocumentRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  public String path;
  public int head;
  @Version
  public int version;

  static Optional<DocumentRow> at(DocumentPath path) {
    return find("path", path.text()).firstResultOptional();
  }

  static DocumentRow begin(DocumentPath path) {
    var row = new DocumentRow();
    row.path = path.text();
    row.persist();
    return row;
  }
}
