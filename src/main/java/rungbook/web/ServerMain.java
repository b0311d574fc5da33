package rungbook.web;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.store.DataFolder;
import rungbook.store.document.Refused;

/** Starts the server; says in a sentence why it could not. */
@QuarkusMain
public final class ServerMain {
  static final String DATA = "rungbook.data";
  private static final String PORT = "rungbook.port";

  private ServerMain() {}

  public static void main(String... arguments) {
    var folder = given(DATA, "RUNGBOOK_DATA").map(data -> Path.of(data).toAbsolutePath());
    folder.ifPresent(data -> System.setProperty(DATA, data.toString()));
    try {
      given(PORT, "RUNGBOOK_PORT").ifPresent(StartFailure::requirePort);
      new DataFolder(folder.orElse(Path.of("data"))).prepare();
    } catch (Refused refused) {
      end(1, refused);
    } catch (IllegalArgumentException noPort) {
      fail(String.valueOf(noPort.getMessage()));
    }
    Quarkus.run(Boolean.getBoolean("rungbook.rehearsal") ? ArchiveTrainingRun.class : null, ServerMain::end, arguments);
  }

  // H2 accepts a relative folder only with a leading ./, so the folder is made absolute
  private static Optional<String> given(String property, String variable) {
    return Stream.of(System.getProperty(property), System.getenv(variable))
        .filter(given -> given != null && !given.isBlank()).findFirst();
  }

  private static void end(int code, Throwable failure) {
    if (failure != null) {
      fail(StartFailure.reason(failure));
    }
    System.exit(code);
  }

  private static void fail(String reason) {
    System.err.println("Rungbook could not start: " + reason);
    System.exit(1);
  }
}
