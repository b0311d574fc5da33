package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.source.Problem;
import rungbook.source.Wording;
import rungbook.system.BenchSystem;

/** Every kind of part that the reader takes is in the manual's table and the hint, and no other. */
class PartKindsTest {

  @Test
  void theManualExplainsEach() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("docs/system-text.md"));
    int start = lines.indexOf(lines.stream().filter(line -> line.startsWith("| kind |")).findFirst().orElseThrow());
    Set<String> explained = lines.subList(start + 2, lines.size()).stream().takeWhile(line -> line.startsWith("|"))
        .flatMap(line -> Pattern.compile("`([a-z ]+)`").matcher(line.split("\\|")[1]).results())
        .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(PartKind.words()), explained);
  }

  @Test
  void theHintForAnUnknownKindListsEach() {
    Problem unknown = BenchSystem.read("A B", "```parts\nlamp: bulb, 24 V, 5 W, A to B\n```\n").problems().stream()
        .filter(problem -> problem.code().name().equals("unknown-part-kind")).findFirst().orElseThrow();
    assertEquals("use one of " + String.join(", ", PartKind.words()), Wording.of(unknown).hint(unknown));
  }

  @ParameterizedTest
  @CsvSource({"switch, lamp closed, true", "fuse, lamp open, true", "wire, lamp closed, false", "heater, lamp on, true",
      "heater, lamp humming, true", "heater, lamp closed, false", "switch, lamp on, false", "state, lamp on, true",
      "state, lamp humming, false"})
  void aConditionAsksWhatTheKindHas(String kind, String condition, boolean known) {
    List<Problem> problems = BenchSystem.read("A B C", "```parts\nlamp: " + kind + ", A to B\n"
        + "asking: contact, B to C, closed when " + condition + "\n```\n").problems();
    assertEquals(known,
        problems.stream().noneMatch(problem -> problem.code().name().equals("unknown-condition")));
  }
}
