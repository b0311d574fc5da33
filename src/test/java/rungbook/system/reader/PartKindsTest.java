package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every kind of part that the reader takes is on the pages that list the kinds, and no other. */
class PartKindsTest {

  private static final Set<String> KINDS = new TreeSet<>(PartReader.KINDS);

  @Test
  void theManualExplainsEach() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("docs/system-text.md"));
    int start = lines.indexOf(lines.stream().filter(line -> line.startsWith("| kind |")).findFirst().orElseThrow());
    Set<String> explained = lines.subList(start + 2, lines.size()).stream().takeWhile(line -> line.startsWith("|"))
        .flatMap(line -> Pattern.compile("`([a-z]+)`").matcher(line.split("\\|")[1]).results())
        .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(KINDS, explained);
  }

  @Test
  void theHintForAnUnknownKindNamesEach() throws IOException {
    String hint = Files.readAllLines(Path.of("docs/rules/unknown-part-kind.md")).stream()
        .filter(line -> line.startsWith("hint: write ")).findFirst().orElseThrow();
    assertEquals(KINDS, Pattern.compile("[a-z]+").matcher(hint.substring("hint: write ".length())).results()
        .map(MatchResult::group).filter(word -> !word.equals("or")).collect(Collectors.toCollection(TreeSet::new)));
  }
}
