package rungbook.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import rungbook.store.DocumentPath;
import rungbook.store.Limits;
import rungbook.store.Outcome;
import rungbook.store.Revision;
import rungbook.store.Save;
import rungbook.store.Store;

/** Turns what requests ask for into what the store has, or into trouble that says what is missing. */
final class Texts {
  private static final int LONGEST_AUTHOR = 100;
  private static final int LONGEST_MESSAGE = 500;

  private Texts() {
  }

  static DocumentPath path(String path) {
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

  static byte[] utf8(String text) {
    if (text == null) {
      throw Trouble.badRequest("there is no text to save", "send it as `text`");
    }
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static String author(String author) {
    return oneLine(author, "the author's name", LONGEST_AUTHOR, 1);
  }

  static String message(String message) {
    return oneLine(message == null ? "" : message, "the message", LONGEST_MESSAGE, 0);
  }

  private static String oneLine(String text, String what, int longest, int shortest) {
    var line = text == null ? "" : text.strip().replaceAll("\\p{Cntrl}+", " ");
    if (line.length() < shortest) {
      throw Trouble.badRequest(what + " is missing", "say who saves, so that others can ask");
    }
    if (line.length() > longest) {
      throw Trouble.badRequest(what + " is longer than " + longest + " characters", "shorten it");
    }
    return line;
  }

  static Save withinLimits(Save save) {
    var most = Limits.of(save.path());
    if (save.content().length > most) {
      throw Trouble.tooLarge("`" + save.path() + "` is larger than " + (most >> 20) + " MB",
          save.path().isPicture() ? "save the picture smaller" : "split the tree in two");
    }
    return save;
  }

  /** The revision that now stands, or trouble with both texts when somebody else was first. */
  static Revision saved(Outcome outcome) {
    if (outcome instanceof Outcome.Overtaken overtaken) {
      throw Trouble.of(409, "Somebody else saved first",
          overtaken.current().author() + " saved revision " + overtaken.current().number() + " in the meantime; your text is kept as a draft",
          "compare both, then save again on top of revision " + overtaken.current().number())
          .with(Map.of("current", DocumentsApi.Text.of(overtaken.current()), "draft", DocumentsApi.KeptDraft.of(overtaken.draft())));
    }
    return outcome instanceof Outcome.Saved saved ? saved.revision() : ((Outcome.Unchanged) outcome).revision();
  }
}
