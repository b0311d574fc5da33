package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.library.TwoFuses;

/** Whatever is in the cache, a proof prints what it prints without one. */
class ProofCacheTest {

  private static final String FIRST = TwoFuses.TREE_PATH;
  private static final String SECOND = "trees/no-light.md";

  private static final String NO_LIGHT = """
      ---
      title: No light
      complaint: The lamp has its voltage and gives no light.
      system: lamp
      ---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [Light](#light)

      ## Light

      ```check
      look: lit
      at: bench
      ```

      - yes: [Good](#good)
      - no: [Volts at the lamp](#volts-at-the-lamp)

      ## Volts at the lamp

      ```check
      measure: AC volts
      leads: D, N
      at: bench
      expect: 110 to 130 V
      ```

      - 60 or more: [Lamp](#lamp)
      - under 60: [Power](#power)

      ## Lamp

      ```finding
      fault: lamp open, second fuse open
      ```

      ## Power

      ```finding
      refer: an electrician
      ```

      ## Good

      ```finding
      healthy: yes
      ```
      """;

  @TempDir
  private Path folder;

  private Path cache() {
    return folder.resolve("cache");
  }

  /** Two trees of one system; the first hands on to the second. */
  @BeforeEach
  void writeLibrary() {
    Texts.write(folder.resolve(TwoFuses.SYSTEM_PATH), TwoFuses.SYSTEM);
    Texts.write(folder.resolve(FIRST),
        TwoFuses.tree("", "Place](#place").replace("[Lamp](#lamp)", "[Lamp](no-light.md)"));
    Texts.write(folder.resolve(SECOND), NO_LIGHT);
  }

  private Run prove(String... more) {
    return Run.withCache(cache(), folder,
        Stream.concat(Stream.of("prove", "trees", "--samples", "4"), Stream.of(more)).toArray(String[]::new));
  }

  private Run anew(String... more) {
    return prove(Stream.concat(Stream.of(more), Stream.of("--no-cache")).toArray(String[]::new));
  }

  private List<Path> entries() throws IOException {
    try (Stream<Path> files = Files.list(cache())) {
      return files.sorted().toList();
    }
  }

  private void edit(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertTrue(text.contains(from), from);
    Files.writeString(folder.resolve(file), text.replace(from, to));
  }

  @Test
  void withoutItNothingIsWritten() {
    anew();
    assertTrue(Files.notExists(cache()));
  }

  @Test
  void aSecondRunSolvesNothingAndPrintsTheSame() throws IOException {
    Run first = prove();
    assertTrue(first.out().contains("proved on lamp"), first.out());
    var old = FileTime.fromMillis(0);
    Path readings = entries().stream().max((a, b) -> Long.compare(a.toFile().length(), b.toFile().length()))
        .orElseThrow();
    for (Path entry : entries()) {
      Files.setLastModifiedTime(entry, old);
    }
    assertEquals(first, prove());
    assertEquals(old, Files.getLastModifiedTime(readings), "the solved states are not even read");
    assertEquals(first, anew());
  }

  @Test
  void eachFormatAndNumberOfSamplesHasItsOwn() {
    prove();
    for (String format : List.of("json", "sarif")) {
      Run anew = anew("--format", format);
      assertEquals(anew, prove("--format", format));
      assertEquals(anew, prove("--format", format));
    }
    assertEquals(anew("--samples", "5"), prove("--samples", "5"));
  }

  @Test
  void aChangedLimitIsProvedOnWhatWasSolved() throws IOException {
    Run before = prove();
    edit(FIRST, "- under 60: [Fuses](#fuses)\n- 60 or more:", "- under 119: [Fuses](#fuses)\n- 119 or more:");
    Run after = prove();
    assertNotEquals(before.out(), after.out());
    assertEquals(anew(), after);
  }

  @Test
  void aChangedTreeChangesThoseThatHandOnToIt() throws IOException {
    prove();
    edit(SECOND, "- 60 or more: [Lamp](#lamp)\n- under 60:", "- 119 or more: [Lamp](#lamp)\n- under 119:");
    assertEquals(anew(), prove());
  }

  @Test
  void aChangedSystemIsSolvedAnew() throws IOException {
    prove();
    edit(TwoFuses.SYSTEM_PATH, "from 114 to 126 V", "from 104 to 136 V");
    assertEquals(anew(), prove());
  }

  @Test
  void damagedEntriesAreMadeAnew() throws IOException {
    Run first = prove();
    for (Path entry : entries()) {
      byte[] bytes = Files.readAllBytes(entry);
      bytes[bytes.length / 2] ^= 1;
      Files.write(entry, bytes);
    }
    assertEquals(first, prove());
    for (Path entry : entries()) {
      Files.write(entry, Arrays.copyOf(Files.readAllBytes(entry), 100));
    }
    assertEquals(first, prove());
    assertEquals(first, prove());
  }

  @Test
  void aFolderThatCannotBeUsedDoesNoHarm() throws IOException {
    Files.writeString(cache(), "no folder");
    assertEquals(anew(), prove());
  }

  @Test
  void twoRunsAtOncePrintTheSame() {
    var other = CompletableFuture.supplyAsync(this::prove);
    Run one = prove();
    assertEquals(one, other.join());
    assertEquals(one, prove());
  }
}
