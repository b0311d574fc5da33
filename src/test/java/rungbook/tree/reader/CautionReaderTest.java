package rungbook.tree.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.tree.Caution;

class CautionReaderTest {

  private static final String LONGEST = "x".repeat(CautionReader.LONGEST_LINE);

  private final Problems problems = new Problems();

  @Test
  void hasBothLines() {
    Caution caution = read("level: danger\nhazard: It burns.\navoid: Wait.");
    assertEquals("It burns. Wait.", caution.hazard() + " " + caution.avoid());
    assertEquals(List.of(), codes());
  }

  @Test
  void aLineIsAbsentOrEmpty() {
    read("level: danger\navoid:");
    assertEquals(List.of("caution-line-missing hazard 2", "caution-line-missing avoid 4"), codes());
  }

  @Test
  void charactersAreCountedAsPeopleCountThem() {
    read("level: danger\nhazard: " + LONGEST.substring(1) + "\uD83D\uDD25\navoid: " + LONGEST);
    assertEquals(List.of(), codes());
    read("level: danger\nhazard: " + LONGEST + "x\navoid: Wait.");
    assertEquals(List.of("caution-line-too-long hazard 4"), codes());
  }

  @Test
  void aLineThatCannotBeReadIsNotMissingToo() {
    read("level: danger\nhazard: It burns: badly\navoid: Wait.");
    assertEquals(List.of(), codes());
  }

  private Caution read(String front) {
    String text = "---\ntitle: Fire\n" + front + "\n---\n\nText.\n";
    return CautionReader.read("fire", DocumentReader.read(new Source("shared/cautions/fire.md", text)), problems);
  }

  private List<String> codes() {
    return problems.all().stream()
        .map(problem -> problem.code().name() + " " + problem.facts().get("key") + " " + problem.place().line())
        .toList();
  }
}
