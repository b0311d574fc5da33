package rungbook.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Draft;
import rungbook.store.document.ImportBatch.Refusal;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;

/** Saves and reads revisions. A save that has returned is on the disk and survives a power cut. */
@ApplicationScoped
public class Store {
  private static final int READ_AT_ONCE = 50;
  private final SaveRace race = new SaveRace();
  private final AtomicLong changes = new AtomicLong();
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
  private final GroupSync disk;
  private volatile Optional<DatabaseFile> file = Optional.empty();

  Store(DataSource database) {
    disk = new GroupSync(() -> sync(database), DiskFull::isReason);
  }

  // H2 syncs its file once for this statement, and never for a commit
  private static void sync(DataSource database) {
    try (var connection = database.getConnection(); var statement = connection.createStatement()) {
      statement.execute("CHECKPOINT SYNC");
    } catch (SQLException failed) {
      throw new IllegalStateException("what was saved could not be written to the disk", failed);
    }
  }

  /** Grows with every save of this program; while it stays the same, what was read before is current. */
  public long changes() {
    return changes.get();
  }

  /** @param listener runs after every save, on the thread that saved; must be quick */
  public void whenChanged(Runnable listener) {
    listeners.add(listener);
  }

  /** @param file what the database has open; no save is answered when it is not in its place */
  void keptIn(Optional<DatabaseFile> file) {
    this.file = file;
  }

  void tellListeners() {
    listeners.forEach(Runnable::run);
  }

  public Outcome save(Save save) {
    return saveAll(List.of(save)).get(0);
  }

  /** Saves all of them in one transaction: if the database fails, none is saved. */
  public List<Outcome> saveAll(List<Save> saves) {
    return durably(() -> saves.stream().map(SaveAttempt::run).toList());
  }

  /**
   * Saves each on top of the newest revision, whatever its number; all of them, or none.
   *
   * @throws AllRefused with every name that the library does not accept
   */
  List<Outcome> saveOnTop(List<Save> saves) {
    return durably(() -> {
      var outcomes = new ArrayList<Outcome>();
      var refused = new ArrayList<Refusal>();
      for (var save : saves) {
        try {
          outcomes.add(SaveAttempt.onTop(save));
        } catch (Refused bad) {
          refused.add(Refusal.of(save.path().text(), bad));
        }
      }
      if (!refused.isEmpty()) {
        throw new AllRefused(refused);
      }
      return outcomes;
    });
  }

  /** Nothing was saved, because some of it is refused. */
  static final class AllRefused extends RuntimeException {
    private final transient List<Refusal> refused;

    AllRefused(List<Refusal> refused) {
      super(refused.get(0).says());
      this.refused = List.copyOf(refused);
    }

    List<Refusal> refused() {
      return refused;
    }
  }

  /**
   * Saves all of them, each on top of the revision it is based on, or none.
   *
   * @throws Overtaken when somebody else saved one of the documents first
   */
  public List<Outcome> saveTogether(List<Save> saves) {
    return durably(() -> saves.stream().map(SaveAttempt::run).map(Overtaken::notIn).toList());
  }

  private List<Outcome> durably(Callable<List<Outcome>> work) {
    file.ifPresent(DatabaseFile::requireInPlace);
    try {
      return written(work);
    } finally {
      changes.incrementAndGet();
      tellListeners();
    }
  }

  /** Runs a transaction, again after each lost race. What it wrote is on the disk when this returns. */
  <T> T written(Callable<T> work) {
    file.ifPresent(DatabaseFile::requireInPlace);
    var result = race.run(work);
    awaitDisk();
    return result;
  }

  private void awaitDisk() {
    disk.await();
    file.ifPresent(DatabaseFile::requireInPlace);
  }

  /** The newest revision of every document that is there, in the order of their paths. */
  public List<Revision> heads() {
    return ReadAttempt
        .run(() -> RevisionRow.heads().stream().map(RevisionRow::toRevision).filter(Revision::isThere).toList());
  }

  /** The revisions that took documents out, of all that are no longer there; in the order of their paths. */
  public List<Revision> removed() {
    return ReadAttempt.run(() -> RevisionRow.heads().stream().map(RevisionRow::toRevision)
        .filter(head -> !head.isThere()).toList());
  }

  /** The number of every document's newest revision, by path. */
  Map<String, Integer> headNumbers() {
    return ReadAttempt
        .run(() -> DocumentRow.all().stream().collect(Collectors.toMap(row -> row.path, row -> row.head)));
  }

  /** Brings what an older program wrote up to what this one needs. */
  void bringUpToDate() {
    QuarkusTransaction.requiringNew().run(DocumentRow::fillKeys);
  }

  /** The newest revision, also one that removed the document. */
  public Optional<Revision> head(DocumentPath path) {
    return ReadAttempt.run(() -> RevisionRow.head(path).map(RevisionRow::toRevision));
  }

  public Optional<Revision> revision(DocumentPath path, int number) {
    return ReadAttempt.run(() -> RevisionRow.at(path, number).map(RevisionRow::toRevision));
  }

  /**
   * Some revisions, oldest first.
   *
   * @param before only those with a smaller number; of these, the newest
   * @param most how many at most
   */
  public List<Revision> history(DocumentPath path, int before, int most) {
    return ReadAttempt.run(() -> RevisionRow.before(path, before, most).stream()
        .map(RevisionRow::toRevision).sorted(Comparator.comparingInt(Revision::number)).toList());
  }

  /** The first revision of a document that is not what its hash says, or that does not follow its parent. */
  public Optional<Integer> firstBroken(DocumentPath path) {
    var chain = new Chain.Check();
    for (var from = 1;; from += READ_AT_ONCE) {
      var some = between(path, from, from + READ_AT_ONCE);
      if (!some.stream().allMatch(chain::holds)) {
        return Optional.of(chain.number());
      }
      if (some.size() < READ_AT_ONCE) {
        return head(path).filter(head -> head.number() >= chain.number()).map(missing -> chain.number());
      }
    }
  }

  /** The first broken revision of each document that has one. */
  Map<DocumentPath, Integer> broken() {
    return ReadAttempt.run(() -> {
      var check = new LibraryCheck();
      try (var all = RevisionRow.inOrder()) {
        all.map(RevisionRow::toRevision).forEach(check::add);
      }
      return check.broken(headNumbers());
    });
  }

  private List<Revision> between(DocumentPath path, int from, int end) {
    return ReadAttempt.run(() -> RevisionRow.between(path, from, end).stream().map(RevisionRow::toRevision).toList());
  }

  public Optional<Draft> draft(DocumentPath path, long id) {
    return ReadAttempt.run(() -> DraftRow.of(path, id).map(DraftRow::toDraft));
  }

  public List<Draft> drafts(DocumentPath path) {
    return ReadAttempt.run(
        () -> DraftRow.<DraftRow>list("path", Sort.by("id"), path.text()).stream().map(DraftRow::toDraft).toList());
  }

  /**
   * Deletes a draft of this document for good.
   *
   * @return whether there was such a draft
   */
  public boolean discardDraft(DocumentPath path, long draftId) {
    var deleted = QuarkusTransaction.requiringNew()
        .call(() -> DraftRow.delete("path = ?1 and id = ?2", path.text(), draftId));
    awaitDisk();
    return deleted > 0;
  }

  /** Deletes a draft for good; does nothing when there is none. */
  public void discardDraft(long draftId) {
    QuarkusTransaction.requiringNew().run(() -> DraftRow.deleteById(draftId));
    awaitDisk();
  }

  long countRevisions() {
    return ReadAttempt.run(() -> RevisionRow.count());
  }

  public boolean isEmpty() {
    return ReadAttempt.run(() -> DocumentRow.count() == 0);
  }
}
