package rungbook.pack.book;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.pack.LeftOut;
import rungbook.pack.PackedTree;
import rungbook.pack.page.Digest;
import rungbook.pack.page.PackInput;
import rungbook.pack.style.Assets;
import rungbook.text.Sha256;

/**
 * Trees as one EPUB 3 book.
 *
 * @param digest over all its files, with zeros where it is itself: 64 hexadecimal digits
 * @param bytes the file; do not modify
 */
public record Book(String digest, byte[] bytes) {

  public static final String ENDING = ".epub";

  public static final String MEDIA_TYPE = "application/epub+zip";

  private static final String OF_MANY = "Diagnostic trees";

  private static final String FOLDER = "EPUB/";

  private static final String CONTAINER = """
      <?xml version="1.0" encoding="UTF-8"?>
      <container xmlns="urn:oasis:names:tc:opendocument:xmlns:container" version="1.0">
      <rootfiles><rootfile full-path="EPUB/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
      </container>
      """;

  /**
   * @param trees sound ones
   * @param leftOut those that have errors, to be named on the title page
   */
  public static Book of(List<PackedTree> trees, List<LeftOut> leftOut, PackInput material) {
    BookChapters chapters = BookChapters.of(trees, material);
    String digest = digest(files(chapters, leftOut, Digest.BLANK));
    return new Book(digest, EpubContainer.of(MEDIA_TYPE, files(chapters, leftOut, digest)));
  }

  private static Map<String, byte[]> files(BookChapters chapters, List<LeftOut> leftOut, String digest) {
    List<String> titles = chapters.titles();
    String title = titles.size() == 1 ? titles.get(0) : OF_MANY;
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("META-INF/container.xml", utf8(CONTAINER));
    files.put(FOLDER + "package.opf", utf8(PackageDocument.of(title, chapters, digest)));
    files.put(FOLDER + Navigation.FILE, utf8(Navigation.of(chapters.all())));
    files.put(FOLDER + BookPage.STYLE, utf8(Assets.BOOK_STYLE));
    files.put(FOLDER + TitlePage.FILE, utf8(TitlePage.of(title, chapters.all(), leftOut, digest)));
    chapters.all().forEach(chapter -> files.put(FOLDER + chapter.file(), utf8(BookPage.of(chapter.title(),
        "epub:type=\"chapter\" role=\"doc-chapter\"", chapter.content()))));
    chapters.pictures().forEach(picture -> files.put(FOLDER + picture.file(), picture.bytes()));
    return files;
  }

  /** Over the digest of each file, in order, with its name. */
  private static String digest(Map<String, byte[]> files) {
    var all = new StringBuilder();
    files.forEach((name, bytes) -> all.append(Sha256.hex(bytes)).append("  ").append(name).append('\n'));
    return Sha256.hex(utf8(all.toString()));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
