package rungbook.web.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.Arrays;
import java.util.stream.Collectors;
import rungbook.source.PictureKind;

/** Which pictures a page lets people choose: {@code {pictures:mediaTypes}} in a template. */
@TemplateExtension(namespace = "pictures")
final class PictureChoice {
  private PictureChoice() {}

  /** {@code image/png,image/jpeg}, as a file chooser takes them. */
  static String mediaTypes() {
    return Arrays.stream(PictureKind.values()).map(PictureKind::mediaType).collect(Collectors.joining(","));
  }

  /** {@code .png,.jpg,.jpeg}, as a file chooser takes them. */
  static String endings() {
    return PictureKind.filter();
  }

  /** {@code image/png=png image/jpeg=jpg}, as the editor's script reads them. */
  static String byMediaType() {
    return Arrays.stream(PictureKind.values()).map(kind -> kind.mediaType() + "=" + kind.ending())
        .collect(Collectors.joining(" "));
  }

  static int mostBytes() {
    return PictureKind.MOST_BYTES;
  }
}
