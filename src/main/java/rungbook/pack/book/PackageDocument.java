package rungbook.pack.book;

import java.time.LocalDate;
import java.util.Base64;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.text.Markup;

/** What a book is and what is in it (EPUB 3.3, section 5), and for whom it can be read (EPUB Accessibility 1.1). */
final class PackageDocument {

  /** A book needs a time of its last change; a draft has no day, and this is the first that a zip file can hold. */
  private static final LocalDate NO_DAY = LocalDate.of(1980, 1, 1);

  private static final String FORM = """
      <?xml version="1.0" encoding="UTF-8"?>
      <package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="digest" xml:lang="en-US">
      <metadata xmlns:dc="http://purl.org/dc/elements/1.1/">
      <dc:identifier id="digest">%s</dc:identifier>
      <dc:title>%s</dc:title>
      <dc:language>en-US</dc:language>
      <meta property="dcterms:modified">%sT00:00:00Z</meta>
      %s</metadata>
      <manifest>
      <item id="nav" href="nav.xhtml" media-type="application/xhtml+xml" properties="nav"/>
      <item id="style" href="style.css" media-type="text/css"/>
      <item id="title" href="title.xhtml" media-type="application/xhtml+xml"/>
      %s</manifest>
      <spine>
      <itemref idref="title"/>
      %s<itemref idref="nav"/>
      </spine>
      </package>
      """;

  private PackageDocument() {}

  /** @param digest 64 hexadecimal digits */
  static String of(String title, BookChapters chapters, String digest) {
    return FORM.formatted(identifier(digest), Markup.escape(title), modified(chapters.all()), accessibility(chapters),
        manifest(chapters), IntStream.rangeClosed(1, chapters.all().size())
            .mapToObj(number -> "<itemref idref=\"chapter-" + number + "\"/>\n").collect(Collectors.joining()));
  }

  /** A name made of a digest, as RFC 6920 writes it. */
  private static String identifier(String digest) {
    return "ni:///sha-256;"
        + Base64.getUrlEncoder().withoutPadding().encodeToString(HexFormat.of().parseHex(digest));
  }

  /** The day of the newest edition. */
  private static LocalDate modified(List<BookChapter> chapters) {
    return chapters.stream().map(chapter -> chapter.from().edition().released()).flatMap(Optional::stream)
        .max(Comparator.naturalOrder()).orElse(NO_DAY);
  }

  /** Conformance to WCAG is not claimed: somebody has to judge it, and be named (EPUB Accessibility 1.1, section 4). */
  private static String accessibility(BookChapters chapters) {
    boolean words = chapters.areInWords();
    return meta("accessMode", "textual") + meta("accessMode", "visual")
        + meta("accessModeSufficient", words ? "textual" : "textual,visual")
        + meta("accessibilityFeature", "tableOfContents") + meta("accessibilityFeature", "structuralNavigation")
        + meta("accessibilityFeature", "readingOrder") + meta("accessibilityFeature", "displayTransformability")
        + (words ? meta("accessibilityFeature", "alternativeText") : "")
        + meta("accessibilityHazard", "none")
        + meta("accessibilitySummary", "Each step is a section with a heading, and each way on a link. Drawings of "
            + (words ? "leads and pictures have their content in words."
                : "leads have their content in words; some pictures do not."));
  }

  private static String meta(String property, String value) {
    return "<meta property=\"schema:" + property + "\">" + value + "</meta>\n";
  }

  private static String manifest(BookChapters chapters) {
    String items = IntStream.rangeClosed(1, chapters.all().size())
        .mapToObj(number -> chapter(number, chapters.all().get(number - 1))).collect(Collectors.joining());
    return items + IntStream.rangeClosed(1, chapters.pictures().size())
        .mapToObj(number -> picture(number, chapters.pictures().get(number - 1))).collect(Collectors.joining());
  }

  private static String chapter(int number, BookChapter chapter) {
    return "<item id=\"chapter-" + number + "\" href=\"" + chapter.file() + "\" media-type=\"application/xhtml+xml\""
        + (chapter.hasDrawings() ? " properties=\"svg\"" : "") + "/>\n";
  }

  private static String picture(int number, BookPictures.Picture picture) {
    return "<item id=\"picture-" + number + "\" href=\"" + picture.file() + "\" media-type=\""
        + picture.kind().mediaType() + "\"/>\n";
  }
}
