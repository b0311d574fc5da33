package rungbook.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockTimeoutException;
import jakarta.persistence.OptimisticLockException;
import jakarta.persistence.PessimisticLockException;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.hibernate.StaleStateException;
import org.hibernate.exception.ConstraintViolationException;
import rungbook.store.document.Chain.Hash;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Draft;
import rungbook.store.document.ImportBatch.Refusal;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.store.document.StoreLimits;

/** Saves and reads revisions. A save that returned is on the disk: a power cut does not take it back. */
@ApplicationScoped
public class Store {
  private static final int MOST_TRIES = 20;
  private static final int TRIES_BESIDE_OTHERS = 4;
  private final ReadWriteLock turns = new ReentrantReadWriteLock();
  private static final int READ_AT_ONCE = 50;
  private final AtomicLong changes = new AtomicLong();
  private final GroupSync disk;

  Store(DataSource database) {
    disk = new GroupSync(() -> sync(database), DiskFull::isReason);
  }

  // H2 forces its file to the disk exactly once for this statement, and for a commit never
  private static void sync(DataSource database) {
    try (var connection = database.getConnection(); var statement = connection.createStatement()) {
      statement.execute("CHECKPOINT SYNC");
    } catch (SQLException failed) {
      throw new IllegalStateException("what was saved could not be written to the disk", failed);
    }
  }

  /** Grows with every revision saved by this program; what was read under one value still holds under it. */
  public long changes() {
    return changes.get();
  }

  public Outcome save(Save save) {
    return saveAll(List.of(save)).get(0);
  }

  /** All of them together or, when the database fails, none. */
  public List<Outcome> saveAll(List<Save> saves) {
    return durably(() -> saves.stream().map(this::attempt).toList());
  }

  /**
   * Each on top of the newest revision, whatever number that has; all of them, or none.
   *
   * @throws AllRefused with every name that the library does not take in
   */
  List<Outcome> saveOnTop(List<Save> saves) {
    return durably(() -> {
      var outcomes = new ArrayList<Outcome>();
      var refused = new ArrayList<Refusal>();
      for (var save : saves) {
        try {
          outcomes.add(onTop(save));
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

  /** Nothing was saved, since some of it is refused. */
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

  private List<Outcome> durably(Callable<List<Outcome>> work) {
    try {
      var outcomes = raceToSave(work);
      disk.await();
      return outcomes;
    } finally {
      changes.incrementAndGet();
    }
  }

  // A race is lost when somebody commits between our look and our write; the next look sees what they wrote. A long
  // transaction
  // could lose against busy writers for ever, and they wait in vain for the rows it holds: after a few tries it has
  // the library to itself.
  private List<Outcome> raceToSave(Callable<List<Outcome>> work) {
    for (var tries = 1;; tries++) {
      var turn = tries < TRIES_BESIDE_OTHERS ? turns.readLock() : turns.writeLock();
      turn.lock();
      try {
        return QuarkusTransaction.requiringNew().call(work);
      } catch (RuntimeException failure) {
        if (!isLostRace(failure) || tries == MOST_TRIES) {
          throw failure;
        }
      } finally {
        turn.unlock();
      }
    }
  }

  private Outcome onTop(Save save) {
    var head = RevisionRow.head(save.path()).map(RevisionRow::toRevision);
    var basedOn = head.map(Revision::number).orElse(0);
    return attempt(new Save(save.path(), basedOn, save.change(), save.content(), save.author(), save.message()), head);
  }

  private Outcome attempt(Save save) {
    return attempt(save, RevisionRow.head(save.path()).map(RevisionRow::toRevision));
  }

  private Outcome attempt(Save save, Optional<Revision> head) {
    var headNumber = head.map(Revision::number).orElse(0);
    if (head.isPresent() && isSame(head.get(), save)) {
      return new Outcome.Unchanged(head.get());
    }
    if (head.isEmpty() && save.change() == Revision.Change.REMOVED) {
      throw new Refused.NotThere(save.path());
    }
    return headNumber == save.basedOn() ? append(save, head) : late(save, head.orElseThrow(() -> unknownBase(save)));
  }

  private Outcome late(Save save, Revision current) {
    return save.change() == Revision.Change.REMOVED ? new Outcome.NotRemoved(current) : keep(save, current);
  }

  private static boolean isSame(Revision head, Save save) {
    return head.change() == save.change() && Arrays.equals(head.content(), save.content());
  }

  private static Refused unknownBase(Save save) {
    return new Refused("`" + save.path() + "` has no revision " + save.basedOn(),
        "a new document is based on revision 0");
  }

  private Outcome append(Save save, Optional<Revision> head) {
    var at = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    var number = save.basedOn() + 1;
    var parent = head.map(Revision::hash).orElse(Hash.NONE);
    var hash = Chain.of(save.path(), number, save.change(), save.author(), save.message(), at, parent, save.content());
    var revision = new Revision(save.path(), number, save.change(), save.author(), save.message(), at, parent, hash,
        save.content());
    var document = DocumentRow.at(save.path()).orElseGet(() -> DocumentRow.begin(save.path()));
    document.head = number;
    RevisionRow.of(document, revision).persistAndFlush();
    return new Outcome.Saved(revision);
  }

  private Outcome keep(Save save, Revision current) {
    var draft = DraftRow.alike(save).orElseGet(() -> keepAnother(save, current));
    return new Outcome.Overtaken(current, draft.toDraft());
  }

  private static DraftRow keepAnother(Save save, Revision current) {
    if (DraftRow.count("path", save.path().text()) >= StoreLimits.DRAFTS_COUNT) {
      throw new Refused("somebody else saved revision " + current.number() + " first, and `" + save.path() + "` has "
          + StoreLimits.DRAFTS_COUNT + " drafts already: this one is not kept",
          "keep your text, discard drafts on the document's history page, then save on top of revision "
              + current.number());
    }
    var draft = DraftRow.of(save, Instant.now().truncatedTo(ChronoUnit.MILLIS));
    draft.persistAndFlush();
    return draft;
  }

  private static boolean isLostRace(Throwable failure) {
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof OptimisticLockException || cause instanceof StaleStateException
          || cause instanceof ConstraintViolationException || cause instanceof LockTimeoutException
          || cause instanceof PessimisticLockException) {
        return true;
      }
    }
    return false;
  }

  /** The newest revision of every document that is there, in the order of their paths. */
  public List<Revision> heads() {
    return QuarkusTransaction.joiningExisting()
        .call(() -> RevisionRow.heads().stream().map(RevisionRow::toRevision).filter(Revision::isThere).toList());
  }

  /** The number of every document's newest revision, by path. */
  Map<String, Integer> headNumbers() {
    return QuarkusTransaction.joiningExisting()
        .call(() -> DocumentRow.all().stream().collect(Collectors.toMap(row -> row.path, row -> row.head)));
  }

  /** Brings what an older program wrote up to what this one needs. */
  void bringUpToDate() {
    QuarkusTransaction.requiringNew().run(DocumentRow::fillKeys);
  }

  /** The newest revision, also one that removed the document. */
  public Optional<Revision> head(DocumentPath path) {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.head(path).map(RevisionRow::toRevision));
  }

  public Optional<Revision> revision(DocumentPath path, int number) {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.at(path, number).map(RevisionRow::toRevision));
  }

  /**
   * Some revisions, oldest first.
   *
   * @param before only those with a smaller number; of these, the newest
   * @param most how many at most
   */
  public List<Revision> history(DocumentPath path, int before, int most) {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.before(path, before, most).stream()
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

  private List<Revision> between(DocumentPath path, int from, int end) {
    return QuarkusTransaction.joiningExisting()
        .call(() -> RevisionRow.between(path, from, end).stream().map(RevisionRow::toRevision).toList());
  }

  public Optional<Draft> draft(DocumentPath path, long id) {
    return QuarkusTransaction.joiningExisting().call(() -> DraftRow.of(path, id).map(DraftRow::toDraft));
  }

  public List<Draft> drafts(DocumentPath path) {
    return QuarkusTransaction.joiningExisting().call(
        () -> DraftRow.<DraftRow>list("path", Sort.by("id"), path.text()).stream().map(DraftRow::toDraft).toList());
  }

  /**
   * Discards a draft of this document; its text is then gone.
   *
   * @return whether there was such a draft
   */
  public boolean putAway(DocumentPath path, long draftId) {
    return QuarkusTransaction.requiringNew()
        .call(() -> DraftRow.delete("path = ?1 and id = ?2", path.text(), draftId)) > 0;
  }

  /** Puts a draft away; its text is then gone. */
  public void putAway(long draftId) {
    QuarkusTransaction.requiringNew().run(() -> DraftRow.deleteById(draftId));
    disk.await();
  }

  long countRevisions() {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.count());
  }

  public boolean isEmpty() {
    return QuarkusTransaction.joiningExisting().call(() -> DocumentRow.count() == 0);
  }
}
