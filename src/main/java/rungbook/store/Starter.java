package rungbook.store;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.runtime.util.ClassPathUtils;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import rungbook.store.document.ImportBatch;
import rungbook.store.document.LibraryArchive;
import rungbook.store.document.Save;

/** Fills an empty library on the first run. */
@ApplicationScoped
class Starter {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final String IN_PROGRAM = "rungbook/starter";
  private final Store store;
  private final Optional<Path> folder;
  private final DataFolder data;

  /** @param folder a folder with {@code trees/} and {@code shared/}; else the library inside the program */
  Starter(Store store, @ConfigProperty(name = "rungbook.starter") Optional<Path> folder,
      @ConfigProperty(name = "rungbook.data") Path data) {
    this.store = store;
    this.folder = folder;
    this.data = new DataFolder(data);
  }

  void begin(@Observes StartupEvent start) throws IOException {
    store.keptIn(DatabaseFile.in(data.folder()));
    data.requireAsManyAsHeld(store.countRevisions());
    store.bringUpToDate();
    store.broken().forEach((path, revision) -> LOG.errorf(
        "revision %d of `%s` is damaged: it is not what was saved; %s", revision, path, DamagedDatabase.cure()));
    if (store.isEmpty()) {
      var incoming = folder.isPresent() ? LibraryArchive.ofFolder(folder.get()) : insideProgram();
      incoming.refused().forEach(r -> LOG.warnf("not loaded: %s %s; %s", r.name(), r.says(), r.hint()));
      store.saveAll(firstRevisions(incoming));
      LOG.infof("first run: %d documents loaded", incoming.files().size());
    }
    data.mark(store.countRevisions());
  }

  private static List<Save> firstRevisions(ImportBatch incoming) {
    return incoming.files().entrySet().stream()
        .map(file -> Save.written(file.getKey(), 0, file.getValue(), "Rungbook", "Came with Rungbook"))
        .toList();
  }

  private static ImportBatch insideProgram() throws IOException {
    var found = new ArrayList<ImportBatch>();
    ClassPathUtils.consumeAsPaths(Starter.class.getClassLoader(), IN_PROGRAM, path -> found.add(read(path)));
    return found.isEmpty() ? LibraryArchive.ofUploads(List.of()) : found.get(0);
  }

  private static ImportBatch read(Path path) {
    try {
      return LibraryArchive.ofFolder(path);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
