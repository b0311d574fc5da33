package rungbook.pack.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungbook.pack.page.Digest;
import rungbook.source.PictureBytes;
import rungbook.source.PictureKind;
import rungbook.text.Sha256;

/** A library's pictures as files of a book: each is in it once, however often it is shown. */
final class BookPictures {

  private final Map<String, byte[]> library;
  private final Map<String, Optional<Picture>> read = new LinkedHashMap<>();

  /**
   * A picture in the book.
   *
   * @param file its name in the book's folder
   * @param bytes its content; do not modify
   */
  record Picture(String file, PictureKind kind, byte[] bytes) {}

  /** @param library pictures by path in the library */
  BookPictures(Map<String, byte[]> library) {
    this.library = library;
  }

  /** Empty for a picture that is not there, or is not what its name says: then its words stand alone. */
  Optional<String> address(String path) {
    return read.computeIfAbsent(path, this::read).map(Picture::file);
  }

  /** Those that chapters show, in the order of their names. */
  List<Picture> shownIn(List<String> chapters) {
    Map<String, Picture> shown = new TreeMap<>();
    read.values().stream().flatMap(Optional::stream)
        .filter(picture -> chapters.stream().anyMatch(chapter -> chapter.contains(" src=\"" + picture.file() + "\"")))
        .forEach(picture -> shown.put(picture.file(), picture));
    return List.copyOf(shown.values());
  }

  private Optional<Picture> read(String path) {
    byte[] bytes = library.get(path);
    return bytes == null ? Optional.empty()
        : PictureKind.of(path).filter(kind -> PictureBytes.fit(kind, bytes))
            .flatMap(kind -> safe(kind, bytes).map(content -> picture(kind, content)));
  }

  /** A picture in a book is a file of its own, where its scripts would run. */
  private static Optional<byte[]> safe(PictureKind kind, byte[] bytes) {
    return kind == PictureKind.SVG ? PlainSvg.of(bytes) : Optional.of(bytes);
  }

  private static Picture picture(PictureKind kind, byte[] bytes) {
    return new Picture("picture-" + Digest.shortened(Sha256.hex(bytes)) + "." + kind.ending(), kind, bytes);
  }
}
