package rungbook.web;

import rungbook.store.DocumentPath;

/** The media types of what the library holds. */
final class MediaTypes {
  private MediaTypes() {
  }

  static String of(DocumentPath path) {
    return switch (path.ending()) {
      case "md" -> "text/markdown; charset=UTF-8";
      case "svg" -> "image/svg+xml";
      case "jpg", "jpeg" -> "image/jpeg";
      default -> "image/" + path.ending();
    };
  }
}
