package rungbook.circuit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Wording;
import rungbook.system.ControlSystem;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;

/** The three systems that come with the project, read from their files. */
final class Systems {

  static final String[] IDS = {"split-cooling-gas-furnace", "heat-pump", "fan-coil-electric-heat"};

  private Systems() {}

  static ControlSystem read(String id) {
    var read = readWithProblems(id);
    if (!read.problems().isEmpty()) {
      throw new IllegalStateException(text(read.problems().get(0)));
    }
    return read.system();
  }

  static SystemReader.Read readWithProblems(String id) {
    Path file = Path.of("shared/systems", id + ".md");
    try {
      return BaseSystem.read(id, DocumentReader.read(new Source(file.toString(), Files.readString(file))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Problem problem) {
    return problem.source().name() + ":" + problem.place() + " " + problem.code() + " " + problem.facts()
        + Wording.find(problem.code().name()).map(w -> ": " + w.sentence(problem)).orElse("");
  }
}
