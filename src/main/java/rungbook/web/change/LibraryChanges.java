package rungbook.web.change;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.mention.LibraryEdit;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.store.Overtaken;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.text.Sha256;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.views.Difference;
import rungbook.web.views.PageLinks;
import rungbook.web.views.ProblemView;

/** Shows and makes changes of several texts at once. */
@ApplicationScoped
public class LibraryChanges {
  private final CompiledLibrary library;
  private final Store store;

  LibraryChanges(CompiledLibrary library, Store store) {
    this.library = library;
    this.store = store;
  }

  /** A change that depends on what the library has. */
  public interface Plan {
    LibraryEdit of(LibraryText text);
  }

  public Preview preview(Plan plan) {
    var now = library.newest().library();
    var edit = plan.of(now.text());
    var added = added(edit, now);
    var texts = edit.texts().entrySet().stream()
        .map(text -> new Preview.ChangedText(text.getKey(), PageLinks.page(text.getKey()),
            Difference.of(Objects.requireNonNull(now.text().texts().get(text.getKey())).text(), text.getValue())))
        .toList();
    return new Preview(texts, ProblemView.of(added.stream().limit(Preview.MOST_SHOWN).toList()),
        Math.max(0, added.size() - Preview.MOST_SHOWN), digest(edit));
  }

  /** Errors are told apart by what they say: their places may shift. */
  private static List<Problem> added(LibraryEdit edit, Library now) {
    var after = LibraryCompiler.compile(edit.applied(now.text()), now);
    var known = errors(now).stream().map(LibraryChanges::said).collect(Collectors.toCollection(HashSet::new));
    return errors(after).stream().filter(error -> !known.contains(said(error))).toList();
  }

  private static List<Problem> errors(Library of) {
    return of.found().shown().stream().filter(problem -> Wording.of(problem).severity() == Severity.ERROR).toList();
  }

  private static String said(Problem problem) {
    return problem.code().name() + problem.source().name() + Wording.of(problem).sentence(problem);
  }

  private static String digest(LibraryEdit edit) {
    return Sha256.hex((edit.texts() + edit.move().toString()).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Saves all of a change, or nothing.
   *
   * @param digest of the preview
   * @param why the message of each revision
   */
  public void make(Plan plan, String digest, String author, String why) {
    var checked = library.newest();
    var edit = plan.of(checked.library().text());
    if (!digest(edit).equals(digest)) {
      throw changedMeanwhile("somebody saved while you looked at what would change");
    }
    try {
      store.saveTogether(saves(edit, checked, author, why));
    } catch (Overtaken late) {
      throw changedMeanwhile(late.current().author() + " saved `" + late.current().path() + "` in the meantime");
    }
  }

  private static ProblemException changedMeanwhile(String why) {
    return ProblemException.of(409, "The library has changed since", why + ", so nothing was changed",
        "go back, load the page again, and look at what would change now");
  }

  private List<Save> saves(LibraryEdit edit, CheckedLibrary now, String author, String why) {
    var saves = new ArrayList<Save>();
    for (Revision head : now.heads()) {
      var path = head.path();
      var text = edit.texts().get(path.text());
      var content = text == null ? head.content() : text.getBytes(StandardCharsets.UTF_8);
      var to = new DocumentPath(edit.after(path.text()));
      if (!to.equals(path)) {
        saves.add(Save.removed(path, head.number(), author, why));
        saves.add(Save.written(to, store.head(to).map(Revision::number).orElse(0), content, author, why));
      } else if (!Arrays.equals(content, head.content())) {
        saves.add(Save.written(path, head.number(), content, author, why));
      }
    }
    return saves;
  }
}
