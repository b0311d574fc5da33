package rungbook.store;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.ImportBatch.Refusal;
import rungbook.store.document.ImportBatch;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;

/**
 * Imports many files at once: all of them, each on top of its newest revision, or none. What others save during the
 * import stays in the history, and the result names it.
 */
@ApplicationScoped
public class Imports {
  private static final String MESSAGE = "Imported";
  private final Store store;

  Imports(Store store) {
    this.store = store;
  }

  /** What became of an import. */
  public sealed interface Result {

    /**
     * Every file is in the library.
     *
     * @param savedMeanwhile those of {@code saved} that somebody else saved while the import was read; their text is
     * the revision before
     */
    record Imported(List<DocumentPath> saved, List<DocumentPath> unchanged, Set<DocumentPath> savedMeanwhile)
        implements Result {}

    /** Nothing was imported, and why: every file that the library refuses. */
    record NothingImported(List<Refusal> refused) implements Result {}
  }

  /** @throws Refused when there is no author */
  public Result bring(ImportBatch incoming, String author) {
    var name = Save.author(author);
    if (!incoming.refused().isEmpty()) {
      return new Result.NothingImported(incoming.refused());
    }
    var before = store.headNumbers();
    var saves = new ArrayList<Save>();
    var refused = new ArrayList<Refusal>();
    incoming.files().forEach((path, content) -> {
      try {
        saves.add(Save.written(path, 0, content, name, MESSAGE));
      } catch (Refused bad) {
        refused.add(Refusal.of(path.text(), bad));
      }
    });
    return refused.isEmpty() ? save(saves, before) : new Result.NothingImported(refused);
  }

  private Result save(List<Save> saves, Map<String, Integer> before) {
    try {
      return imported(store.saveOnTop(saves), before);
    } catch (Store.AllRefused nothing) {
      return new Result.NothingImported(nothing.refused());
    }
  }

  private static Result imported(List<Outcome> outcomes, Map<String, Integer> before) {
    var saved = outcomes.stream().filter(Outcome.Saved.class::isInstance).map(o -> ((Outcome.Saved) o).revision())
        .toList();
    var unchanged = outcomes.stream().filter(Outcome.Unchanged.class::isInstance)
        .map(o -> ((Outcome.Unchanged) o).revision().path()).toList();
    var meanwhile = saved.stream().filter(r -> r.number() - 1 > before.getOrDefault(r.path().text(), 0))
        .map(Revision::path).collect(Collectors.toCollection(TreeSet::new));
    return new Result.Imported(saved.stream().map(Revision::path).toList(), unchanged, meanwhile);
  }
}
