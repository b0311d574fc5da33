package rungbook.web.service;

import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Draft;
import rungbook.store.document.Outcome;
import rungbook.store.document.Revision;
import rungbook.web.http.ProblemException;

/** Looks up in the store what requests name; throws a problem that says what is missing. */
public final class Requests {
  public static final int REVISIONS_AT_ONCE = 50;

  private Requests() {}

  public static DocumentPath path(String path) {
    if (path == null) {
      throw ProblemException.badRequest("it is not said which document is meant",
          "send its place in the library as `path`");
    }
    return new DocumentPath(path);
  }

  public static Revision head(Store store, DocumentPath path) {
    return store.head(path).filter(Revision::isThere).orElseThrow(() -> ProblemException
        .notFound("`" + path + "` is not in the library", "look for it in the library, or write it anew"));
  }

  public static Revision revision(Store store, DocumentPath path, int number) {
    return store.revision(path, number).orElseThrow(
        () -> ProblemException.notFound("`" + path + "` has no revision " + number, "choose one from its history"));
  }

  /** The newest revisions older than {@code before}, oldest first. */
  public static List<Revision> history(Store store, DocumentPath path, int before) {
    var revisions = store.history(path, before, REVISIONS_AT_ONCE);
    if (revisions.isEmpty()) {
      throw ProblemException.notFound(store.head(path).isEmpty() ? "`" + path + "` never was in the library"
          : "`" + path + "` has no revision before " + before, "choose a document from the library");
    }
    return revisions;
  }

  public static Draft draft(Store store, DocumentPath path, long id) {
    return store.draft(path, id)
        .orElseThrow(() -> ProblemException.notFound("`" + path + "` has no draft " + id + ", or no longer",
            "its history shows what is still kept"));
  }

  public static byte[] utf8(String text) {
    if (text == null) {
      throw ProblemException.badRequest("there is no text to save", "send it as `text`");
    }
    try {
      var bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
      var copy = new byte[bytes.remaining()];
      bytes.get(copy);
      return copy;
    } catch (CharacterCodingException loneSurrogate) {
      throw ProblemException.badRequest("the text holds half of a character: a surrogate without its other half",
          "send the text as UTF-8");
    }
  }

  /** The current revision after a save; on a conflict, throws a problem with both texts. */
  public static Revision saved(Outcome outcome) {
    if (outcome instanceof Outcome.Conflict conflict) {
      throw ProblemException.of(409, "Somebody else saved first",
          conflict.current().author() + " saved revision " + conflict.current().number()
              + " in the meantime; your text is kept as a draft",
          "compare both, then save again on top of revision " + conflict.current().number())
          .with(Map.of("current", DocumentText.of(conflict.current()), "draft", KeptDraft.of(conflict.draft())));
    }
    if (outcome instanceof Outcome.NotRemoved late) {
      throw ProblemException.of(409, "Somebody else saved first",
          late.current().author() + " saved revision " + late.current().number()
              + " in the meantime; nothing was taken out",
          "read revision " + late.current().number() + ", then take it out on top of that")
          .with(Map.of("current", DocumentEntry.of(late.current())));
    }
    return outcome instanceof Outcome.Saved saved ? saved.revision() : ((Outcome.Unchanged) outcome).revision();
  }
}
