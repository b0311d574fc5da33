package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.source.Wording;

/**
 * Each file in {@code src/test/resources/cases} holds a little library and the problems that it has, as people read
 * them. After a change that is meant, {@code mvn test -Dtest=CasesTest -Dgolden.write=true} writes the problems anew:
 * read them then.
 */
class CasesTest {

  private static final Path CASES = Path.of("src/test/resources/cases");
  private static final String EXPECTED = "\n## Problems\n\n```text\n";

  static List<String> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void problemsAreAsWritten(String name) throws IOException {
    Path file = CASES.resolve(name);
    String text = Files.readString(file);
    int end = text.indexOf(EXPECTED) < 0 ? text.length() : text.indexOf(EXPECTED);
    String examples = text.substring(0, end);
    String whole = examples + EXPECTED + printed(Example.problems(examples)) + "```\n";
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file, whole);
    }
    assertEquals(whole, text);
  }

  private static String printed(List<Problem> problems) {
    var out = new StringBuilder();
    for (Problem problem : problems) {
      Wording wording = Wording.of(problem);
      out.append(problem.source().name()).append(':').append(problem.place()).append(' ').append(problem.code())
          .append('\n');
      out.append("  ").append(wording.severity().word()).append(": ").append(wording.sentence(problem)).append('\n');
      out.append("  hint: ").append(wording.hint(problem)).append('\n');
      problem.witness().ifPresent(witness -> out.append("  shown by: ").append(shown(witness)).append('\n'));
    }
    return out.toString();
  }

  private static String shown(Witness witness) {
    if (witness instanceof Witness.Reading reading) {
      return reading.shown();
    }
    return witness instanceof Witness.Answers answers ? String.join(", ", answers.words())
        : path((Witness.Path) witness);
  }

  private static String path(Witness.Path path) {
    return String.join(" > ", path.stops().stream()
        .map(stop -> stop.answer().isEmpty() ? stop.step() : stop.step() + " (" + stop.answer() + ")").toList());
  }
}
