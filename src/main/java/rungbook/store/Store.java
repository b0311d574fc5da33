package rungbook.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.OptimisticLockException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.hibernate.StaleStateException;
import org.hibernate.exception.ConstraintViolationException;
import rungbook.store.Chain.Hash;

/** Saves and reads revisions. A save that returned is on the disk. */
@ApplicationScoped
public class Store {
  private static final int MOST_TRIES = 20;
  private final AtomicLong changes = new AtomicLong();

  /** Grows with every revision saved by this program; what was read under one value still holds under it. */
  public long changes() {
    return changes.get();
  }

  public Outcome save(Save save) {
    return saveAll(List.of(save)).get(0);
  }

  /** All of them together or, when the database fails, none. */
  public List<Outcome> saveAll(List<Save> saves) {
    try {
      return raceToSave(saves);
    } finally {
      changes.incrementAndGet();
    }
  }

  // a race is lost when somebody commits between our look and our write; the next look sees what they wrote
  private List<Outcome> raceToSave(List<Save> saves) {
    for (var tries = 1; ; tries++) {
      try {
        return QuarkusTransaction.requiringNew().call(() -> saves.stream().map(this::attempt).toList());
      } catch (RuntimeException failure) {
        if (!isLostRace(failure) || tries == MOST_TRIES) {
          throw failure;
        }
      }
    }
  }

  private Outcome attempt(Save save) {
    var head = RevisionRow.head(save.path()).map(RevisionRow::toRevision);
    var headNumber = head.map(Revision::number).orElse(0);
    if (head.isPresent() && isSame(head.get(), save)) {
      return new Outcome.Unchanged(head.get());
    }
    return headNumber == save.basedOn() ? append(save, head) : keep(save, head.orElseThrow(() -> unknownBase(save)));
  }

  private static boolean isSame(Revision head, Save save) {
    return head.change() == save.change() && Arrays.equals(head.content(), save.content());
  }

  private static Refused unknownBase(Save save) {
    return new Refused("`" + save.path() + "` has no revision " + save.basedOn(), "a new document is based on revision 0");
  }

  private Outcome append(Save save, Optional<Revision> head) {
    var at = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    var number = save.basedOn() + 1;
    var parent = head.map(Revision::hash).orElse(Hash.NONE);
    var hash = Chain.of(save.path(), number, save.change(), save.author(), save.message(), at, parent, save.content());
    var revision = new Revision(save.path(), number, save.change(), save.author(), save.message(), at, parent, hash, save.content());
    var document = DocumentRow.at(save.path()).orElseGet(() -> DocumentRow.begin(save.path()));
    document.head = number;
    RevisionRow.of(document, revision).persistAndFlush();
    return new Outcome.Saved(revision);
  }

  private Outcome keep(Save save, Revision current) {
    var draft = DraftRow.of(save, Instant.now().truncatedTo(ChronoUnit.MILLIS));
    draft.persistAndFlush();
    return new Outcome.Overtaken(current, draft.toDraft());
  }

  private static boolean isLostRace(Throwable failure) {
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof OptimisticLockException || cause instanceof StaleStateException
          || cause instanceof ConstraintViolationException) {
        return true;
      }
    }
    return false;
  }

  /** The newest revision of every document that is there, in the order of their paths. */
  public List<Revision> heads() {
    return QuarkusTransaction.joiningExisting().call(() ->
        RevisionRow.heads().stream().map(RevisionRow::toRevision).filter(Revision::isThere).toList());
  }

  /** The newest revision, also one that removed the document. */
  public Optional<Revision> head(DocumentPath path) {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.head(path).map(RevisionRow::toRevision));
  }

  public Optional<Revision> revision(DocumentPath path, int number) {
    return QuarkusTransaction.joiningExisting().call(() -> RevisionRow.at(path, number).map(RevisionRow::toRevision));
  }

  /** All revisions, oldest first; empty when the document never was. */
  public List<Revision> history(DocumentPath path) {
    return QuarkusTransaction.joiningExisting().call(() ->
        new ArrayList<>(RevisionRow.history(path).stream().map(RevisionRow::toRevision).toList()));
  }

  public List<Draft> drafts(DocumentPath path) {
    return QuarkusTransaction.joiningExisting().call(() ->
        DraftRow.<DraftRow>list("path", Sort.by("id"), path.text()).stream().map(DraftRow::toDraft).toList());
  }

  /** Puts a draft away; its text is then gone. */
  public void putAway(long draftId) {
    QuarkusTransaction.requiringNew().run(() -> DraftRow.deleteById(draftId));
  }

  public boolean isEmpty() {
    return QuarkusTransaction.joiningExisting().call(() -> DocumentRow.count() == 0);
  }
}
