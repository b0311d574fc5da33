package rungbook.store;

import io.quarkus.arc.Arc;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.test.junit.callback.QuarkusTestBeforeClassCallback;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.microprofile.config.ConfigProvider;
import rungbook.web.service.CompiledLibrary;

/**
 * Gives each test class on a running server the library that the program comes with, so that no class sees what
 * another saved. All of them share one server.
 */
public final class FreshLibrary implements QuarkusTestBeforeClassCallback {
  @Override
  public void beforeClass(Class<?> testClass) {
    QuarkusTransaction.requiringNew().run(() -> {
      DraftRow.deleteAll();
      RevisionRow.deleteAll();
      DocumentRow.deleteAll();
    });
    try {
      Files.deleteIfExists(ConfigProvider.getConfig().getValue("rungbook.data", Path.class).resolve(DataFolder.MARKER));
      Arc.container().instance(Starter.class).get().begin(new StartupEvent());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    Arc.container().instance(CompiledLibrary.class).get().newest();
  }
}
