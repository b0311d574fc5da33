package rungbook.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungbook.proof.coverage.TwoTrees;
import rungbook.report.json.ProofJson;

class CoverageTextTest {

  private static final String TEXT = CoverageText.of(TwoTrees.coverage(), Style.PLAIN);

  private static String line(String fault) {
    return TEXT.lines().filter(line -> line.startsWith("  " + fault)).findFirst().orElseThrow().replaceAll(" +", " ");
  }

  @Test
  void tableSaysByWhichTreeInHowManyChecksAndMinutes() {
    assertEquals(" lamp dead 33 % 2/6>2", line("lamp dead"));
    assertEquals(" wire weak 67 % never", line("wire weak"));
  }

  @Test
  void whatIsNotCoveredIsListed() {
    assertTrue(Pattern.compile("not covered  wire weak 67 % \\(gives 2\\); together 67 % of the\\s+likelihood")
        .matcher(TEXT).find(), TEXT);
  }

  @Test
  void noLineIsWiderThanATerminal() {
    assertEquals(List.of(), TEXT.lines().filter(line -> line.length() > Wrap.WIDTH).toList());
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    String json = ProofJson.of(List.of(), TwoTrees.coverage(), new Report(0, List.of(), List.of()));
    JsonNode system = new ObjectMapper().readTree(json).get("library").get(0);
    JsonNode dead = system.get("faults").get(0).get("complaints").get(0);
    assertEquals("one", dead.get("tree").asText());
    assertEquals("other", dead.get("ends").get(0).get("tree").asText());
    assertEquals("found", dead.get("ends").get(0).get("how").asText());
    assertEquals("wire weak", system.get("uncovered").get(0).get("case").asText());
  }
}
