package rungbook.web;

import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rungbook.store.DocumentPath;
import rungbook.store.Draft;
import rungbook.store.Outcome;
import rungbook.store.Revision;
import rungbook.store.Store;

/** Turns what requests ask for into what the store has, or into trouble that says what is missing. */
final class Texts {
  static final int REVISIONS_AT_ONCE = 50;

  private Texts() {
  }

  static DocumentPath path(String path) {
    if (path == null) {
      throw Trouble.badRequest("it is not said which document is meant", "send its place in the library as `path`");
    }
    return new DocumentPath(path);
  }

  static Revision head(Store store, DocumentPath path) {
    return store.head(path).filter(Revision::isThere).orElseThrow(() ->
        Trouble.notFound("`" + path + "` is not in the library", "look for it in the library, or write it anew"));
  }

  static Revision revision(Store store, DocumentPath path, int number) {
    return store.revision(path, number).orElseThrow(() ->
        Trouble.notFound("`" + path + "` has no revision " + number, "choose one from its history"));
  }

  /** The newest revisions older than {@code before}, oldest first. */
  static List<Revision> history(Store store, DocumentPath path, int before) {
    var revisions = store.history(path, before, REVISIONS_AT_ONCE);
    if (revisions.isEmpty()) {
      throw Trouble.notFound(store.head(path).isEmpty() ? "`" + path + "` never was in the library"
          : "`" + path + "` has no revision before " + before, "choose a document from the library");
    }
    return revisions;
  }

  static Draft draft(Store store, DocumentPath path, long id) {
    return store.draft(path, id).orElseThrow(() -> Trouble.notFound("`" + path + "` has no draft " + id + ", or no longer",
        "its history shows what is still kept"));
  }

  static byte[] utf8(String text) {
    if (text == null) {
      throw Trouble.badRequest("there is no text to save", "send it as `text`");
    }
    try {
      var bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
      return Arrays.copyOf(bytes.array(), bytes.limit());
    } catch (CharacterCodingException loneSurrogate) {
      throw Trouble.badRequest("the text holds half of a character: a surrogate without its other half", "send the text as UTF-8");
    }
  }

  /** The revision that now stands, or trouble with both texts when somebody else was first. */
  static Revision saved(Outcome outcome) {
    if (outcome instanceof Outcome.Overtaken overtaken) {
      throw Trouble.of(409, "Somebody else saved first",
          overtaken.current().author() + " saved revision " + overtaken.current().number() + " in the meantime; your text is kept as a draft",
          "compare both, then save again on top of revision " + overtaken.current().number())
          .with(Map.of("current", DocumentsApi.Text.of(overtaken.current()), "draft", DocumentsApi.KeptDraft.of(overtaken.draft())));
    }
    if (outcome instanceof Outcome.NotRemoved late) {
      throw Trouble.of(409, "Somebody else saved first",
          late.current().author() + " saved revision " + late.current().number() + " in the meantime; nothing was taken out",
          "read revision " + late.current().number() + ", then take it out on top of that")
          .with(Map.of("current", DocumentsApi.Entry.of(late.current())));
    }
    return outcome instanceof Outcome.Saved saved ? saved.revision() : ((Outcome.Unchanged) outcome).revision();
  }
}
