package rungbook.pack.page;

import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import rungbook.source.PictureKind;

/** Pictures as data URIs, for the {@code img} element only: there a picture's own scripts and links are dead. */
final class EmbeddedPictures {

  private final Map<String, byte[]> byPath;

  EmbeddedPictures(Map<String, byte[]> byPath) {
    this.byPath = byPath;
  }

  /**
   * @param file the text that shows the picture
   * @param target the picture's address as written there
   */
  Optional<String> dataUri(String file, String target) {
    byte[] bytes = byPath.get(file.substring(0, file.lastIndexOf('/') + 1) + target);
    return bytes == null ? Optional.empty()
        : PictureKind.of(target)
            .map(kind -> "data:" + kind.mediaType() + ";base64," + Base64.getEncoder().encodeToString(bytes));
  }
}
