package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.library.TwoFuses;

class ProveTest {

  private static final String TREE = "trees/outdoor-unit-does-not-stop.md";

  @TempDir
  private Path folder;

  /** A small library of its own: proved in a moment. */
  private Run proveLamp(String... more) {
    Texts.write(folder.resolve(TwoFuses.SYSTEM_PATH), TwoFuses.SYSTEM);
    Texts.write(folder.resolve(TwoFuses.TREE_PATH), TwoFuses.tree());
    return Run.in(folder,
        Stream.concat(Stream.of("prove", TwoFuses.TREE_PATH), Stream.of(more)).toArray(String[]::new));
  }

  @Test
  void theTableNamesFindingsFaultsAndLimits() {
    Run run = Run.in(Path.of("."), "prove", "--samples", "8", TREE);
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
    JsonNode proof = new ObjectMapper().readTree(proveLamp("--format", "json").out()).get("proofs").get(0);
    assertEquals(TwoFuses.TREE_PATH, proof.get("file").asText());
    assertEquals(0.8 + 0.2 * 2 / 3, proof.get("named").get("detected").asDouble(), 0.01,
        "in a fifth of the houses one of three faults is missed");
    assertEquals("healthy", proof.get("cases").get(0).get("name").asText());
    double arriving = 0;
    for (JsonNode ending : proof.get("endings")) {
      arriving += ending.get("likelihood").asDouble();
    }
    assertEquals(1, arriving, 1e-9);
  }

  /** The earlier text took two findings for each other. */
  private static String earlier(Path folder) throws IOException {
    String now = Files.readString(Path.of(TREE));
    String was = now.replace("fault: contactor welded closed", "fault: Y and G crossed at furnace");
    assertNotEquals(now, was);
    Texts.write(folder.resolve("earlier.md"), was);
    return folder.resolve("earlier.md").toString();
  }

  @Test
  void againstAnEarlierTextItSaysWhatEndsElsewhere(@TempDir Path folder) throws IOException {
    String old = earlier(folder);
    String text = prove("--against", old).out();
    assertTrue(text.replaceAll("\\s+", " ").contains("contactor welded closed: ended at Contactor welded, which says "
        + "Y and G crossed at furnace, now at Contactor welded, which says contactor welded closed"), text);
    JsonNode against = new ObjectMapper().readTree(prove("--against", old, "--format", "json").out()).get("proofs")
        .get(0).get("against");
    assertEquals(against.get("before").get("named").asInt() + 1, against.get("now").get("named").asInt());
    assertEquals("contactor welded closed", against.get("changes").get(0).get("case").asText());
  }

  @Test
  void againstACopyOfTheTreesItSaysSoForEach() {
    Run run = prove("--against", "trees");
    assertTrue(run.out().contains("compared with trees: every fault ends where it did"), run.out());
  }

  @Test
  void whatIsNoEarlierTextIsMisuse(@TempDir Path folder) throws IOException {
    assertEquals(2, prove("--against", folder.resolve("none.md").toString()).exit());
    assertEquals(2, prove("--against", "pom.xml").exit());
    Texts.write(folder.resolve("bad.md"), "---\n");
    Files.write(folder.resolve("bad.md"), new byte[] {'a', (byte) 0xff});
    assertEquals(2, prove("--against", folder.resolve("bad.md").toString()).exit());
    assertEquals(2, prove("trees/contactor-buzzes-control-voltage-low.md", "--against", TREE).exit());
  }

  @Test
  void sarifHoldsTheProblems() throws IOException {
    Texts.write(folder.resolve("a.md"), Texts.SOUND);
    String sarif = Run.in(folder, "prove", "a.md", "--format", "sarif").out();
    JsonNode run = new ObjectMapper().readTree(sarif).get("runs").get(0);
    assertEquals("not-proved", run.get("results").get(0).get("ruleId").asText());
  }

  @Test
  void sameCommandPrintsTheSame() {
    assertEquals(proveLamp(), proveLamp());
  }

  @Test
  void numberOfSamplesIsBounded() {
    Run run = Run.in(Path.of("."), "prove", "--samples", "0", TREE);
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("write a number from 1 to 10000"), run.err());
  }

  @Test
  void aTreeWithNoSystemIsNotProvedAndSaysSo() {
    Texts.write(folder.resolve("a.md"), Texts.SOUND);
    Run run = Run.in(folder, "prove", "a.md");
    assertEquals(1, run.exit(), run.out());
    assertTrue(run.err().contains("nothing was proved"), run.err());
    assertTrue(run.out().contains("not-proved: this tree is not proved: it names no system"), run.out());
  }
}
