package rungbook.web.api;

import rungbook.source.PictureKind;
import rungbook.store.document.DocumentPath;

/** The media types of what the library holds. */
final class MediaTypes {
  private MediaTypes() {}

  static String of(DocumentPath path) {
    return PictureKind.of(path.text()).map(PictureKind::mediaType).orElse("text/markdown; charset=UTF-8");
  }
}
