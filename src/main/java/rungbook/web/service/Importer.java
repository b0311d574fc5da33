package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import rungbook.store.Imports;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.ImportBatch;
import rungbook.web.http.ProblemException;

/** Brings a folder or zip into the library: all of it, or nothing and why. */
@ApplicationScoped
public class Importer {
  private final Imports imports;

  Importer(Imports imports) {
    this.imports = imports;
  }

  /**
   * Paths by what became of them.
   *
   * @param savedMeanwhile those of {@code saved} that somebody else saved during the import; theirs is the revision
   * before
   */
  public record Report(List<String> saved, List<String> unchanged, List<String> skipped, List<String> savedMeanwhile) {}

  public Report bring(ImportBatch incoming, String author) {
    if (incoming.refused().isEmpty() && incoming.files().isEmpty()) {
      throw ProblemException.badRequest("There is no Markdown file and no picture in it",
          "choose the folder that holds `trees` and `shared`");
    }
    var result = imports.bring(incoming, author);
    if (result instanceof Imports.Result.NothingImported nothing) {
      throw refused(nothing.refused());
    }
    var done = (Imports.Result.Imported) result;
    return new Report(paths(done.saved()), paths(done.unchanged()), incoming.skipped(), paths(done.savedMeanwhile()));
  }

  private static ProblemException refused(List<ImportBatch.Refusal> refused) {
    var first = refused.get(0);
    return ProblemException.badRequest("Nothing was imported: `" + first.name() + "` " + first.says(), first.hint())
        .with(Map.of("refused", refused));
  }

  private static List<String> paths(Collection<DocumentPath> paths) {
    return paths.stream().map(DocumentPath::text).toList();
  }
}
