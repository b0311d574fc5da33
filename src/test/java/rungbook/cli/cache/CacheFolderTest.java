package rungbook.cli.cache;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheFolderTest {

  private static final String KEY = new KeyDigest().with("one").key();
  private static final String OTHER = new KeyDigest().with("other").key();
  private static final byte[] CONTENT = "what was found".getBytes(StandardCharsets.UTF_8);

  /** Three entries of 104 bytes, and not four. */
  private static final long MOST_BYTES = 350;

  @TempDir
  private Path folder;

  private CacheFolder cache() {
    return new CacheFolder(folder.resolve("cache"));
  }

  private Path file(String key) {
    return folder.resolve("cache").resolve(key);
  }

  @Test
  void whatIsSavedIsThere() {
    cache().save(KEY, CONTENT);
    assertArrayEquals(CONTENT, cache().load(KEY).orElseThrow());
    assertEquals(Optional.empty(), cache().load(OTHER));
  }

  @Test
  void anyFlippedBitMakesAnEntryMissing() throws IOException {
    cache().save(KEY, CONTENT);
    byte[] good = Files.readAllBytes(file(KEY));
    for (int bit = 0; bit < good.length * Byte.SIZE; bit++) {
      byte[] bad = good.clone();
      bad[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
      Files.write(file(KEY), bad);
      assertEquals(Optional.empty(), cache().load(KEY), "bit " + bit);
    }
  }

  @Test
  void anEntryCutShortIsMissing() throws IOException {
    cache().save(KEY, CONTENT);
    byte[] good = Files.readAllBytes(file(KEY));
    for (int length = 0; length < good.length; length++) {
      Files.write(file(KEY), Arrays.copyOf(good, length));
      assertEquals(Optional.empty(), cache().load(KEY), length + " bytes");
    }
  }

  @Test
  void anEntryOfAnotherVersionOrKeyIsMissing() throws IOException {
    cache().save(KEY, CONTENT);
    Files.copy(file(KEY), file(OTHER));
    assertEquals(Optional.empty(), cache().load(OTHER));
    byte[] good = Files.readAllBytes(file(KEY));
    Files.write(file(KEY), new String(good, StandardCharsets.ISO_8859_1).replace("cache 1", "cache 2")
        .getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(Optional.empty(), cache().load(KEY));
  }

  /** A file in the place of the folder stops even the user who may do everything. */
  @Test
  void aFolderThatCannotBeWrittenToKeepsNothing() throws IOException {
    Files.writeString(folder.resolve("cache"), "no folder");
    cache().save(KEY, CONTENT);
    cache().trim();
    assertEquals(Optional.empty(), cache().load(KEY));
  }

  @Test
  void severalMayWriteOneEntryAtOnce() throws IOException {
    byte[] large = new byte[200_000];
    Arrays.fill(large, (byte) 7);
    cache().save(KEY, large);
    CompletableFuture<?>[] all = IntStream.range(0, 4).mapToObj(i -> CompletableFuture.runAsync(() -> {
      for (int turn = 0; turn < 25; turn++) {
        cache().save(KEY, large);
        assertArrayEquals(large, cache().load(KEY).orElseThrow());
      }
    })).toArray(CompletableFuture<?>[]::new);
    CompletableFuture.allOf(all).join();
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void whatWasUsedLongestAgoIsDroppedFirst() throws IOException {
    var small = new CacheFolder(folder.resolve("cache"), MOST_BYTES);
    for (int i = 0; i < 5; i++) {
      String key = new KeyDigest().with(i).key();
      small.save(key, CONTENT);
      Files.setLastModifiedTime(file(key), FileTime.fromMillis(1_000_000L * i));
    }
    assertTrue(small.load(new KeyDigest().with(0).key()).isPresent());
    small.trim();
    assertTrue(small.load(new KeyDigest().with(0).key()).isPresent(), "it was used just now");
    assertEquals(Optional.empty(), small.load(new KeyDigest().with(1).key()));
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      assertTrue(files.mapToLong(file -> file.toFile().length()).sum() <= MOST_BYTES);
    }
  }

  /** XDG Base Directory Specification 0.8: a relative path is to be ignored. */
  @Test
  void theFolderIsWhereTheEnvironmentSays() {
    assertEquals(Path.of("/a/rungbook"), place(Map.of("XDG_CACHE_HOME", "/a")));
    assertEquals(Path.of("/home/me/.cache/rungbook"), place(Map.of()));
    assertEquals(Path.of("/home/me/.cache/rungbook"), place(Map.of("XDG_CACHE_HOME", "a")));
    assertEquals(Path.of("/own"), place(Map.of("RUNGBOOK_CACHE", "/own", "XDG_CACHE_HOME", "/a")));
    assertEquals(Optional.empty(), CacheFolder.place(name -> "", ""));
  }

  private static Path place(Map<String, String> environment) {
    return CacheFolder.place(name -> environment.getOrDefault(name, ""), "/home/me").orElseThrow();
  }
}
