package rungbook.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Lob;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernate.annotations.Immutable;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/** A revision in the database; Hibernate never updates it. */
@Entity
@SuppressWarnings("NullAway.Init") // Hibernate sets the fields
@Immutable
@Table(name = "revision")
public class RevisionRow extends PanacheEntityBase {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;
  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  public DocumentRow document;
  public int number;
  @Enumerated(EnumType.STRING)
  public Revision.Change change;
  public String author;
  public String message;
  public Instant savedAt;
  public String parentHash;
  public String hash;
  @Lob
  public byte[] content;

  static RevisionRow of(DocumentRow document, Revision revision) {
    var row = new RevisionRow();
    row.document = document;
    row.number = revision.number();
    row.change = revision.change();
    row.author = revision.author();
    row.message = revision.message();
    row.savedAt = revision.at();
    row.parentHash = revision.parent().hex();
    row.hash = revision.hash().hex();
    row.content = revision.content();
    return row;
  }

  static Optional<RevisionRow> at(DocumentPath path, int number) {
    return find("from RevisionRow r join fetch r.document d where d.path = ?1 and r.number = ?2",
        path.text(), number).firstResultOptional();
  }

  static Optional<RevisionRow> head(DocumentPath path) {
    return find("from RevisionRow r join fetch r.document d where d.path = ?1 and r.number = d.head",
        path.text()).firstResultOptional();
  }

  static List<RevisionRow> heads() {
    return list("from RevisionRow r join fetch r.document d where r.number = d.head order by d.path");
  }

  /** Every revision, a document's oldest first; to be closed. Only the current one is kept in memory. */
  static Stream<RevisionRow> inOrder() {
    return RevisionRow.<RevisionRow>stream("from RevisionRow r join fetch r.document d order by d.path, r.number")
        .peek(row -> getEntityManager().clear());
  }

  static List<RevisionRow> before(DocumentPath path, int number, int most) {
    return find("from RevisionRow r join fetch r.document d where d.path = ?1 and r.number < ?2 order by r.number desc",
        path.text(), number)
        .page(0, most).list();
  }

  static List<RevisionRow> between(DocumentPath path, int from, int end) {
    return list(
        "from RevisionRow r join fetch r.document d "
            + "where d.path = ?1 and r.number >= ?2 and r.number < ?3 order by r.number",
        path.text(), from, end);
  }

  Revision toRevision() {
    return new Revision(new DocumentPath(document.path), number, change, author, message, savedAt,
        new Chain.Hash(parentHash), new Chain.Hash(hash), content);
  }
}
