package rungbook.web;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.net.BindException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.store.InUse;

/** Starts the server; says in a sentence why it could not. */
@QuarkusMain
public final class Main {
  static final String DATA = "rungbook.data";

  private Main() {
  }

  public static void main(String... arguments) {
    givenData().ifPresent(folder -> System.setProperty(DATA, Path.of(folder).toAbsolutePath().toString()));
    Quarkus.run(Boolean.getBoolean("rungbook.rehearsal") ? Rehearsal.class : null, Main::end, arguments);
  }

  // H2 takes a relative folder only with a leading ./, which nobody types
  private static Optional<String> givenData() {
    return Stream.of(System.getProperty(DATA), System.getenv("RUNGBOOK_DATA")).filter(given -> given != null && !given.isBlank()).findFirst();
  }

  private static void end(int code, Throwable failure) {
    if (failure != null) {
      System.err.println("Rungbook could not start: " + reason(failure));
    }
    System.exit(failure == null ? code : 1);
  }

  static String reason(Throwable failure) {
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof BindException) {
        return "the port is taken; stop the program that has it, or choose another with -Drungbook.port=PORT";
      }
      if (InUse.isReason(cause)) {
        return "another Rungbook has this library open; stop it, or choose another folder with -Drungbook.data=FOLDER";
      }
    }
    return failure + "; the lines above say more";
  }
}
