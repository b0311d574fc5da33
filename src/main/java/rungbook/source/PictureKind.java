package rungbook.source;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of pictures that a library may hold. */
public enum PictureKind {
  PNG("PNG", "image/png", "png"),
  JPEG("JPEG", "image/jpeg", "jpg", "jpeg"),
  GIF("GIF", "image/gif", "gif"),
  WEBP("WebP", "image/webp", "webp"),
  SVG("SVG", "image/svg+xml", "svg");

  /** The most bytes of one picture. */
  public static final int MOST_BYTES = 1024 * 1024;

  private final String words;
  private final String mediaType;
  @SuppressWarnings("ImmutableEnumChecker") // made by Set.of or List.of
  private final List<String> endings;

  PictureKind(String words, String mediaType, String... endings) {
    this.words = words;
    this.mediaType = mediaType;
    this.endings = List.of(endings);
  }

  /** The kind by the file name's extension, ignoring case; empty if the name is not a picture's. */
  public static Optional<PictureKind> of(String fileName) {
    String ending = fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> kind.endings.contains(ending)).findFirst();
  }

  /** The extensions to show in messages, one per kind: {@code `.png`, `.jpg`, … or `.svg`}. */
  public static String endingsInWords() {
    List<String> all = Arrays.stream(values()).map(kind -> "`." + kind.ending() + "`").toList();
    return String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.get(all.size() - 1);
  }

  /** All extensions with a leading period, comma-separated, as a file input's {@code accept} attribute takes them. */
  public static String filter() {
    return Arrays.stream(values()).flatMap(kind -> kind.endings.stream()).map(ending -> "." + ending)
        .collect(Collectors.joining(","));
  }

  /** The name for display: {@code JPEG}. */
  public String words() {
    return words;
  }

  public String mediaType() {
    return mediaType;
  }

  /** The usual extension, without the period. */
  public String ending() {
    return endings.get(0);
  }
}
