package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page for contributors about the circuit names only classes and methods that exist. */
class CircuitInternalsTest {

  private static final Path PAGE = Path.of("docs/circuit-internals.md");
  private static final Pattern NAME = Pattern.compile("`([A-Z]\\w+)(?:\\.([a-z]\\w+))?`");

  @Test
  void everyNameExists() throws IOException {
    List<Path> sources = sources();
    var unknown = new ArrayList<String>();
    int names = 0;
    Matcher name = NAME.matcher(Files.readString(PAGE));
    while (name.find()) {
      names++;
      if (!exists(sources, name.group(1), Optional.ofNullable(name.group(2)))) {
        unknown.add(name.group());
      }
    }
    assertEquals(List.of(), unknown);
    assertTrue(names > 20, names + " names");
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  private static boolean exists(List<Path> sources, String type, Optional<String> method) throws IOException {
    for (Path source : sources) {
      if (source.endsWith(type + ".java")) {
        return method.isEmpty() || Files.readString(source).contains(" " + method.get() + "(");
      }
    }
    return false;
  }
}
