package rungbook.store.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.text.ProcessorSpeed;

class LibraryArchiveTest {
  private static final long SEED = 20260102;

  @TempDir
  Path scratch;

  @Test
  void aZipThatWasWrittenReadsBack() throws IOException {
    var documents = List.of(revision("company.md", "x"), revision("shared/cautions/gas.md", "y"),
        revision("trees/a.md", "z"));
    var incoming = LibraryArchive.ofZip(file(written(documents)));
    assertEquals(documents.stream().map(Revision::path).toList(), List.copyOf(incoming.files().keySet()));
    assertArrayEquals("z".getBytes(UTF_8), incoming.files().get(new DocumentPath("trees/a.md")));
  }

  @Test
  void theSameDocumentsGiveTheSameZip() {
    var documents = List.of(revision("trees/a.md", "z"));
    assertArrayEquals(written(documents), written(documents));
  }

  @Test
  void foldersAboveTheLibraryArePutAside() throws IOException {
    var incoming = LibraryArchive
        .ofZip(zip("my library/trees/a.md", "a", "my library/shared/cautions/b.md", "b", "my library/README.md", "c"));
    assertEquals(Set.of("trees/a.md", "shared/cautions/b.md"), names(incoming));
    assertEquals(List.of("my library/README.md"), incoming.skipped());
  }

  @Test
  void looseTextsBecometeres() throws IOException {
    assertEquals(Set.of("trees/a.md", "trees/pictures/b.svg"),
        names(LibraryArchive.ofZip(zip("a.md", "a", "pictures/b.svg", "<svg/>"))));
  }

  @Test
  void whatIsNoPartOfALibraryIsSkippedAndNamed() throws IOException {
    var incoming = LibraryArchive.ofZip(zip("a.md", "a", "prices.xlsx", "b", ".git/config.md", "c"));
    assertEquals(List.of("prices.xlsx", ".git/config.md"), incoming.skipped());
  }

  @Test
  void namesThatLeadOutAreRefused() throws IOException {
    for (var name : List.of("../a.md", "trees/../../a.md", "/etc/a.md", "C:\\a.md", "trees\\..\\a.md")) {
      var incoming = LibraryArchive.ofZip(zip(name, "a"));
      assertEquals(name, incoming.refused().get(0).name());
      assertTrue(incoming.files().isEmpty());
    }
  }

  @Test
  void aZipThatUnpacksToTooMuchIsCutOffWhileItInflates() throws IOException {
    var text = "a line of some random digits %d\n".formatted(SEED).getBytes(UTF_8);
    var random = new java.util.Random(SEED);
    var content = new byte[StoreLimits.TEXT];
    for (var i = 0; i < content.length; i++) {
      content[i] = i / 2_000 % 7 == 0 ? (byte) ('a' + random.nextInt(26)) : text[i % text.length];
    }
    var names = IntStream.range(0, 40).mapToObj(i -> "trees/" + i + ".md").toList();
    var incoming = LibraryArchive.ofZip(zip(names, content));
    assertTrue(incoming.refused().get(0).says().contains("128 MB"), incoming.refused().get(0).says());
    assertEquals(32, incoming.files().size());
  }

  @Test
  void aZipBombIsRefusedByWhatItUnpacksTo() throws IOException {
    var bomb = zip(List.of("trees/a.md", "trees/b.md"), new byte[StoreLimits.TEXT]);
    assertTrue(Files.size(bomb) < 1 << 20, "the bomb itself is small");
    assertEquals(List.of("unpacks to more than 500 times its size", "unpacks to more than 500 times its size"),
        says(LibraryArchive.ofZip(bomb)));
  }

  @Test
  void whatIsNoPartOfALibraryIsNotUnpackedAtAll() throws IOException {
    var names = IntStream.range(0, 50).mapToObj(i -> i + ".bin").toList();
    var zip = zip(Deflater.BEST_SPEED, names, new byte[16 << 20]);
    var began = ManagementFactory.getThreadMXBean();
    var before = began.getCurrentThreadCpuTime();
    assertEquals(names.size(), LibraryArchive.ofZip(zip).skipped().size());
    assertTrue(began.getCurrentThreadCpuTime() - before < ProcessorSpeed.limitMillis(250) * 1_000_000,
        "800 MB are not unpacked in a quarter of a second");
  }

  @Test
  void moreEntriesThanAnyLibraryHasAreRefused() throws IOException {
    var zip = zip(IntStream.rangeClosed(0, 4 * StoreLimits.FILES_COUNT).mapToObj(i -> i + ".bin").toList(),
        new byte[0]);
    assertTrue(assertThrows(Refused.class, () -> LibraryArchive.ofZip(zip)).getMessage().contains("20000 entries"));
  }

  @Test
  void moreFilesThanAnImportTakesAreRefused() throws IOException {
    var names = IntStream.rangeClosed(1, StoreLimits.FILES_COUNT).mapToObj(i -> "trees/" + i + ".md")
        .collect(Collectors.toList());
    assertEquals(List.of(), LibraryArchive.ofZip(zip(names, new byte[] {'a'})).refused());
    names.add("trees/one-more.md");
    assertTrue(LibraryArchive.ofZip(zip(names, new byte[] {'a'})).refused().get(0).says().contains("5000 files"));
  }

  @Test
  void aZipThatWasCutOffIsRefusedWhereverItWasCut() throws IOException {
    var whole = Files.readAllBytes(zip("trees/a.md", "a".repeat(300), "trees/b.md", "b", "trees/c.md", "c"));
    for (var length = 0; length < whole.length; length++) {
      var cut = file(Arrays.copyOf(whole, length));
      assertTrue(assertThrows(Refused.class, () -> LibraryArchive.ofZip(cut)).getMessage().contains("cut off"),
          "at " + length);
    }
  }

  @Test
  void aDamagedZipIsRefusedAndNeverHalfTaken() throws IOException {
    var names = List.of("trees/a.md", "trees/b.md");
    var whole = Files
        .readAllBytes(zip(names, "a line of text that is here more than once\n".repeat(9).getBytes(UTF_8)));
    var taken = LibraryArchive.ofZip(file(whole)).files();
    for (var bit = 0; bit < whole.length * 8; bit++) {
      var damaged = whole.clone();
      damaged[bit / 8] ^= (byte) (1 << bit % 8);
      assertSameOrRefused(taken, file(damaged), bit);
    }
  }

  // a bit of an entry's time or attributes changes nothing; one of its name makes it another file
  private static void assertSameOrRefused(Map<DocumentPath, byte[]> taken, Path damaged, int bit) throws IOException {
    try {
      var incoming = LibraryArchive.ofZip(damaged);
      assertTrue(!incoming.refused().isEmpty() || incoming.files().size() + incoming.skipped().size() == taken.size(),
          "bit " + bit);
      var contents = taken.values().iterator().next();
      incoming.files().values().forEach(content -> assertArrayEquals(contents, content, "bit " + bit));
    } catch (Refused expected) {
      assertTrue(!expected.hint().isEmpty(), "bit " + bit);
    }
  }

  @Test
  void oneNameTwiceInTheDirectoryIsRefused() throws IOException {
    var twice = Files.readAllBytes(zip("trees/x.md", "1", "trees/y.md", "2"));
    for (var i = 0; i < twice.length; i++) {
      twice[i] = twice[i] == 'y' ? (byte) 'x' : twice[i];
    }
    assertEquals(1, says(LibraryArchive.ofZip(file(twice))).size());
  }

  @Test
  void tooLargeAndNotUtf8AreRefusedByName() throws IOException {
    var incoming = LibraryArchive
        .ofZip(zip("trees/big.md", letters(StoreLimits.TEXT + 1), "trees/big.png", letters(StoreLimits.PICTURE + 1)));
    assertEquals(List.of("is larger than 4 MB", "is larger than 1 MB"),
        incoming.refused().stream().map(ImportBatch.Refusal::says).toList());
    var latin = LibraryArchive.ofZip(zip(List.of("trees/latin.md"), new byte[] {'k', (byte) 0xfc}));
    assertEquals("is not UTF-8 text", latin.refused().get(0).says());
  }

  @Test
  void aPictureThatIsBrokenOrOfAnotherKindIsRefused() throws IOException {
    for (var name : List.of("a.png", "a.jpg", "a.gif", "a.webp", "a.svg")) {
      var incoming = LibraryArchive.ofZip(zip(name, "GIF, PNG"));
      assertTrue(incoming.files().isEmpty() && incoming.refused().get(0).says().contains("damaged"), name);
    }
    assertEquals(Set.of("trees/a.gif", "trees/a.svg", "trees/a.webp"),
        names(LibraryArchive.ofZip(
            zip("a.gif", "GIF89a;", "a.svg", "\uFEFF<?xml version=\"1.0\"?><svg/>", "a.webp", "RIFF....WEBPVP8 "))));
  }

  @Test
  void twoEntriesForOneDocumentAreRefused() throws IOException {
    for (var other : List.of("b/trees/x.md", "trees\\x.md", "trees/X.md")) {
      var incoming = LibraryArchive.ofZip(zip("a/trees/x.md", "one", other, "two"));
      assertEquals("would be the same document as `a/trees/x.md`", incoming.refused().get(0).says(), other);
    }
  }

  @Test
  void accentsWrittenAsTheirOwnCharactersAreComposed() throws IOException {
    assertEquals(Set.of("trees/caf\u00e9.md"), names(LibraryArchive.ofZip(zip("trees/cafe\u0301.md", "x"))));
  }

  @Test
  void whatIsNoZipIsSaidToBeNone() throws IOException {
    for (var content : List.of("hello", "", "PK", "PK\3\4 and no more")) {
      var none = file(content.getBytes(UTF_8));
      assertTrue(assertThrows(Refused.class, () -> LibraryArchive.ofZip(none)).getMessage().contains("not a zip file"));
    }
  }

  @Test
  void aFolderReadsLikeAZip(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("trees"));
    Files.writeString(folder.resolve("trees/a.md"), "a");
    Files.writeString(folder.resolve("notes.md"), "n");
    assertEquals(Set.of("trees/a.md"), names(LibraryArchive.ofFolder(folder)));
  }

  private static Set<String> names(ImportBatch incoming) {
    return incoming.files().keySet().stream().map(DocumentPath::text).collect(Collectors.toSet());
  }

  private static byte[] written(List<Revision> documents) {
    var out = new ByteArrayOutputStream();
    LibraryArchive.writeZip(documents, out);
    return out.toByteArray();
  }

  private Path zip(String... namesAndTexts) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var i = 0; i < namesAndTexts.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
        zip.write(namesAndTexts[i + 1].getBytes(UTF_8));
      }
    }
    return file(bytes.toByteArray());
  }

  private Path zip(List<String> names, byte[] content) throws IOException {
    return zip(Deflater.DEFAULT_COMPRESSION, names, content);
  }

  private Path zip(int level, List<String> names, byte[] content) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      zip.setLevel(level);
      for (var name : names) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content);
      }
    }
    return file(bytes.toByteArray());
  }

  private Path file(byte[] content) throws IOException {
    return Files.write(scratch.resolve("a.zip"), content);
  }

  private static String letters(int length) {
    return new java.util.Random(SEED).ints(length, 'a', 'z').mapToObj(letter -> String.valueOf((char) letter))
        .collect(Collectors.joining());
  }

  private static List<String> says(ImportBatch incoming) {
    return incoming.refused().stream().map(ImportBatch.Refusal::says).toList();
  }

  private static Revision revision(String path, String text) {
    return new Revision(new DocumentPath(path), 1, Revision.Change.WRITTEN, "Odalys", "", Instant.EPOCH,
        Chain.Hash.NONE, Chain.Hash.NONE, text.getBytes(UTF_8));
  }
}
