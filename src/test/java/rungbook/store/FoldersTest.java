package rungbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FoldersTest {
  @Test
  void aZipThatWasWrittenReadsBack() throws IOException {
    var documents = List.of(revision("company.md", "x"), revision("shared/cautions/gas.md", "y"), revision("trees/a.md", "z"));
    var incoming = Folders.ofZip(new ByteArrayInputStream(written(documents)));
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
    var incoming = Folders.ofZip(zip("my library/trees/a.md", "a", "my library/shared/cautions/b.md", "b", "my library/README.md", "c"));
    assertEquals(Set.of("trees/a.md", "shared/cautions/b.md"), names(incoming));
    assertEquals(List.of("my library/README.md"), incoming.skipped());
  }

  @Test
  void looseTextsBecomeTrees() throws IOException {
    assertEquals(Set.of("trees/a.md", "trees/pictures/b.svg"), names(Folders.ofZip(zip("a.md", "a", "pictures/b.svg", "<svg/>"))));
  }

  @Test
  void whatIsNoPartOfALibraryIsSkippedAndNamed() throws IOException {
    var incoming = Folders.ofZip(zip("a.md", "a", "prices.xlsx", "b", ".git/config.md", "c"));
    assertEquals(List.of("prices.xlsx", ".git/config.md"), incoming.skipped());
  }

  @Test
  void namesThatLeadOutAreRefused() throws IOException {
    for (var name : List.of("../a.md", "trees/../../a.md", "/etc/a.md", "C:\\a.md", "trees\\..\\a.md")) {
      var incoming = Folders.ofZip(zip(name, "a"));
      assertEquals(name, incoming.refused().get(0).name());
      assertTrue(incoming.files().isEmpty());
    }
  }

  @Test
  void aZipBombIsCutOffWhileItInflates() throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var i = 0; i < 60; i++) {
        zip.putNextEntry(new ZipEntry("trees/" + i + ".md"));
        zip.write(new byte[Limits.TEXT]);
      }
    }
    var incoming = Folders.ofZip(new ByteArrayInputStream(bytes.toByteArray()));
    assertTrue(bytes.size() < 1 << 20, "the bomb itself is small");
    assertTrue(incoming.refused().get(0).says().contains("128 MB"));
  }

  @Test
  void tooLargeAndNotUtf8AreRefusedByName() throws IOException {
    var incoming = Folders.ofZip(zip("trees/big.md", "x".repeat(Limits.TEXT + 1), "trees/big.png", "x".repeat(Limits.PICTURE + 1)));
    assertEquals(List.of("is larger than 4 MB", "is larger than 1 MB"), incoming.refused().stream().map(Incoming.Refusal::says).toList());
    var latin = Folders.ofZip(zipOfBytes("trees/latin.md", new byte[] {'k', (byte) 0xfc}));
    assertEquals("is not UTF-8 text", latin.refused().get(0).says());
  }

  @Test
  void aPictureThatIsBrokenOrOfAnotherKindIsRefused() throws IOException {
    for (var name : List.of("a.png", "a.jpg", "a.gif", "a.webp", "a.svg")) {
      var incoming = Folders.ofZip(zip(name, "GIF, PNG"));
      assertTrue(incoming.files().isEmpty() && incoming.refused().get(0).says().contains("damaged"), name);
    }
    assertEquals(Set.of("trees/a.gif", "trees/a.svg", "trees/a.webp"),
        names(Folders.ofZip(zip("a.gif", "GIF89a;", "a.svg", "\uFEFF<?xml version=\"1.0\"?><svg/>", "a.webp", "RIFF....WEBPVP8 "))));
  }

  @Test
  void twoEntriesForOneDocumentAreRefused() throws IOException {
    for (var other : List.of("b/trees/x.md", "trees\\x.md", "trees/X.md")) {
      var incoming = Folders.ofZip(zip("a/trees/x.md", "one", other, "two"));
      assertEquals("would be the same document as `a/trees/x.md`", incoming.refused().get(0).says(), other);
    }
  }

  @Test
  void accentsWrittenAsTheirOwnCharactersAreComposed() throws IOException {
    assertEquals(Set.of("trees/caf\u00e9.md"), names(Folders.ofZip(zip("trees/cafe\u0301.md", "x"))));
  }

  @Test
  void whatIsNoZipIsSaidToBeNone() {
    assertThrows(ZipException.class, () -> Folders.ofZip(new ByteArrayInputStream("hello".getBytes(UTF_8))));
  }

  @Test
  void aFolderReadsLikeAZip(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("trees"));
    Files.writeString(folder.resolve("trees/a.md"), "a");
    Files.writeString(folder.resolve("notes.md"), "n");
    assertEquals(Set.of("trees/a.md"), names(Folders.ofFolder(folder)));
  }

  private static Set<String> names(Incoming incoming) {
    return incoming.files().keySet().stream().map(DocumentPath::text).collect(Collectors.toSet());
  }

  private static byte[] written(List<Revision> documents) {
    var out = new ByteArrayOutputStream();
    Folders.writeZip(documents, out);
    return out.toByteArray();
  }

  private static ByteArrayInputStream zip(String... namesAndTexts) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var i = 0; i < namesAndTexts.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
        zip.write(namesAndTexts[i + 1].getBytes(UTF_8));
      }
    }
    return new ByteArrayInputStream(bytes.toByteArray());
  }

  private static ByteArrayInputStream zipOfBytes(String name, byte[] content) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(content);
    }
    return new ByteArrayInputStream(bytes.toByteArray());
  }

  private static Revision revision(String path, String text) {
    return new Revision(new DocumentPath(path), 1, Revision.Change.WRITTEN, "Odalys", "", Instant.EPOCH,
        Chain.Hash.NONE, Chain.Hash.NONE, text.getBytes(UTF_8));
  }
}
