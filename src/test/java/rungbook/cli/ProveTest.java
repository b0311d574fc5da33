package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

  /** The earlier text did not name the second fuse. */
  @Test
  void againstAnEarlierTextItSaysWhatEndsElsewhere() throws IOException {
    Texts.write(folder.resolve("earlier.md"),
        TwoFuses.tree().replace("fault: first fuse open, second fuse open", "fault: first fuse open"));
    String text = proveLamp("--against", "earlier.md").out().replaceAll("\\s+", " ");
    assertTrue(text.contains("compared with earlier.md: 2 faults end elsewhere than before"), text);
    assertTrue(text.contains("first fuse open: ended at Fuses, which says first fuse open, now at Fuses, which says "
        + "first fuse open, second fuse open"), text);
    JsonNode against = new ObjectMapper().readTree(proveLamp("--against", "earlier.md", "--format", "json").out())
        .get("proofs").get(0).get("against");
    assertEquals(2, against.get("before").get("named").asInt());
    assertEquals(3, against.get("now").get("named").asInt());
    assertEquals("first fuse open", against.get("changes").get(0).get("case").asText());
  }

  @Test
  void againstACopyOfTheLibraryOrOfItsTreesItSaysSoForEach() {
    Texts.write(folder.resolve("copy").resolve(TwoFuses.SYSTEM_PATH), TwoFuses.SYSTEM);
    Texts.write(folder.resolve("copy").resolve(TwoFuses.TREE_PATH), TwoFuses.tree());
    Texts.write(folder.resolve("old/dark.md"), TwoFuses.tree());
    Texts.write(folder.resolve("other/light.md"), TwoFuses.tree());
    for (String copy : List.of("copy", "copy/trees", "old")) {
      String out = proveLamp("--against", copy).out();
      assertTrue(out.contains("compared with " + copy + ": every fault ends where it did"), out);
    }
    String other = proveLamp("--against", "other").out();
    assertTrue(other.contains("not compared with other: it has no `dark.md`"), other);
  }

  @Test
  void whatIsNoEarlierTextIsMisuse() throws IOException {
    Texts.write(folder.resolve("notes.txt"), "notes");
    Files.write(folder.resolve("bad.md"), new byte[] {'a', (byte) 0xff});
    for (String wrong : List.of("none.md", "notes.txt", "bad.md")) {
      assertEquals(2, proveLamp("--against", wrong).exit(), wrong);
    }
    Texts.write(folder.resolve("trees/second.md"), TwoFuses.tree());
    Run two = proveLamp("trees/second.md", "--against", TwoFuses.TREE_PATH);
    assertEquals(2, two.exit());
    assertTrue(two.err().contains("is one tree, and 2 are proved"), two.err());
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
  void everyPairIsFollowedOnDemand() throws IOException {
    JsonNode pairs = new ObjectMapper().readTree(proveLamp("--pairs", "--format", "json").out()).get("proofs").get(0)
        .get("everyPair");
    assertEquals(64, pairs.get("drawn").asInt());
    double ends = Stream.of("found", "mistaken", "healthy", "referred", "nothing", "inCircle", "notFollowed")
        .mapToDouble(end -> pairs.get(end).asDouble()).sum();
    assertEquals(1, ends, 1e-9);
    assertTrue(proveLamp("--pairs").out().contains("every two faults at once"));
  }

  @Test
  void numberOfPairsIsBounded() {
    Run run = Run.in(Path.of("."), "prove", "--pairs", "--most-pairs", "0", TREE);
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("write a number from 1 to 1999000"), run.err());
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
