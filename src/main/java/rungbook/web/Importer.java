package rungbook.web;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rungbook.store.DocumentPath;
import rungbook.store.Incoming;
import rungbook.store.Outcome;
import rungbook.store.Revision;
import rungbook.store.Save;
import rungbook.store.Store;

/** Brings a folder or zip into the library: all of it, or nothing and why. */
@ApplicationScoped
class Importer {
  private static final String MESSAGE = "Imported";
  private final Store store;

  Importer(Store store) {
    this.store = store;
  }

  /** Paths by what became of them. */
  record Report(List<String> saved, List<String> unchanged, List<String> skipped) {}

  Report bring(Incoming incoming, String author) {
    requireAcceptable(incoming);
    var outcomes = store.saveAll(incoming.files().entrySet().stream().map(file -> onTop(file, author)).toList());
    return new Report(paths(outcomes, Outcome.Saved.class), paths(outcomes, Outcome.Unchanged.class), incoming.skipped());
  }

  private static void requireAcceptable(Incoming incoming) {
    if (!incoming.refused().isEmpty()) {
      var first = incoming.refused().get(0);
      throw Trouble.badRequest("Nothing was imported: `" + first.name() + "` " + first.says(), first.hint())
          .with(Map.of("refused", incoming.refused()));
    }
    if (incoming.files().isEmpty()) {
      throw Trouble.badRequest("There is no Markdown file and no picture in it", "choose the folder that holds `trees` and `shared`");
    }
  }

  private Save onTop(Map.Entry<DocumentPath, byte[]> file, String author) {
    var basedOn = store.head(file.getKey()).map(Revision::number).orElse(0);
    return Save.written(file.getKey(), basedOn, file.getValue(), author, MESSAGE);
  }

  private static List<String> paths(List<Outcome> outcomes, Class<? extends Outcome> kind) {
    return outcomes.stream().filter(kind::isInstance).map(Texts::saved).map(saved -> saved.path().text()).collect(Collectors.toList());
  }
}
