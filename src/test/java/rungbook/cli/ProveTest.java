package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProveTest {

  private static final String TREE = "trees/outdoor-unit-does-not-stop.md";
  private static final Run TABLE = prove();

  private static Run prove(String... more) {
    String[] words = new String[more.length + 4];
    System.arraycopy(new String[] {"prove", "--samples", "8", TREE}, 0, words, 0, 4);
    System.arraycopy(more, 0, words, 4, more.length);
    return Run.in(Path.of("."), words);
  }

  @Test
  void theTableNamesFindingsFaultsAndLimits() {
    Run run = TABLE;
    assertEquals(0, run.exit(), run.out());
    assertTrue(run.out().contains("proved on split-cooling-gas-furnace"), run.out());
    assertTrue(run.out().contains("no healthy system gets a fault"), run.out());
    assertTrue(
        run.out().lines().anyMatch(line -> line.matches(" *Contactor welded +[0-9.]+ % +contactor welded closed")),
        run.out());
    assertTrue(
        run.out().lines()
            .anyMatch(line -> line.matches(" *R to Y without the thermostat, line .* +5 Ω  .*; none wrong")),
        run.out());
  }

  @Test
  void jsonHoldsTheMeasures() throws IOException {
    JsonNode proof = new ObjectMapper().readTree(prove("--format", "json").out()).get("proofs").get(0);
    assertEquals(TREE, proof.get("file").asText());
    assertEquals(1, proof.get("named").get("detected").asDouble(), 1e-9);
    assertEquals("healthy", proof.get("cases").get(0).get("name").asText());
    double arriving = 0;
    for (JsonNode ending : proof.get("endings")) {
      arriving += ending.get("likelihood").asDouble();
    }
    assertEquals(1, arriving, 1e-9);
  }

  @Test
  void sarifHoldsTheProblems(@TempDir Path folder) throws IOException {
    Texts.write(folder.resolve("a.md"), Texts.SOUND);
    String sarif = Run.in(folder, "prove", "a.md", "--format", "sarif").out();
    JsonNode run = new ObjectMapper().readTree(sarif).get("runs").get(0);
    assertEquals("not-proved", run.get("results").get(0).get("ruleId").asText());
  }

  @Test
  void sameCommandPrintsTheSame() {
    assertEquals(TABLE, prove());
  }

  @Test
  void numberOfSamplesIsBounded() {
    Run run = Run.in(Path.of("."), "prove", "--samples", "0", TREE);
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("write a number from 1 to 10000"), run.err());
  }

  @Test
  void aTreeWithNoSystemIsNotProvedAndSaysSo(@TempDir Path folder) {
    Texts.write(folder.resolve("a.md"), Texts.SOUND);
    Run run = Run.in(folder, "prove", "a.md");
    assertEquals(1, run.exit(), run.out());
    assertTrue(run.err().contains("nothing was proved"), run.err());
    assertTrue(run.out().contains("not-proved: this tree is not proved: it names no system"), run.out());
  }
}
