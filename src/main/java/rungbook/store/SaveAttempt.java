package rungbook.store;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import rungbook.store.document.Chain;
import rungbook.store.document.Chain.Hash;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.store.document.StoreLimits;

/** One attempt to save, inside the caller's transaction. */
final class SaveAttempt {
  private SaveAttempt() {}

  /** Saves on top of the newest revision, whatever its number. */
  static Outcome onTop(Save save) {
    var head = RevisionRow.head(save.path()).map(RevisionRow::toRevision);
    var basedOn = head.map(Revision::number).orElse(0);
    return run(new Save(save.path(), basedOn, save.change(), save.content(), save.author(), save.message()), head);
  }

  /** Saves on top of the revision that the save is based on. */
  static Outcome run(Save save) {
    return run(save, RevisionRow.head(save.path()).map(RevisionRow::toRevision));
  }

  private static Outcome run(Save save, Optional<Revision> head) {
    var headNumber = head.map(Revision::number).orElse(0);
    if (head.isPresent() && isSame(head.get(), save)) {
      return new Outcome.Unchanged(head.get());
    }
    if (head.isEmpty() && save.change() == Revision.Change.REMOVED) {
      throw new Refused.NotThere(save.path());
    }
    return headNumber == save.basedOn() ? append(save, head) : late(save, head.orElseThrow(() -> unknownBase(save)));
  }

  private static Outcome late(Save save, Revision current) {
    return save.change() == Revision.Change.REMOVED ? new Outcome.NotRemoved(current) : keepDraft(save, current);
  }

  private static boolean isSame(Revision head, Save save) {
    return head.change() == save.change() && Arrays.equals(head.content(), save.content());
  }

  private static Refused unknownBase(Save save) {
    return new Refused("`" + save.path() + "` has no revision " + save.basedOn(),
        "a new document is based on revision 0");
  }

  private static Outcome append(Save save, Optional<Revision> head) {
    var at = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    var number = save.basedOn() + 1;
    var parent = head.map(Revision::hash).orElse(Hash.NONE);
    var hash = Chain.of(save.path(), number, save.change(), save.author(), save.message(), at, parent, save.content());
    var revision = new Revision(save.path(), number, save.change(), save.author(), save.message(), at, parent, hash,
        save.content());
    var document = DocumentRow.at(save.path()).orElseGet(() -> DocumentRow.insert(save.path()));
    document.head = number;
    RevisionRow.of(document, revision).persistAndFlush();
    // each query looks through all that its transaction holds: the time would grow with the square of the saves
    RevisionRow.getEntityManager().clear();
    return new Outcome.Saved(revision);
  }

  private static Outcome keepDraft(Save save, Revision current) {
    var draft = DraftRow.alike(save).orElseGet(() -> newDraft(save, current));
    return new Outcome.Conflict(current, draft.toDraft());
  }

  private static DraftRow newDraft(Save save, Revision current) {
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
}
