package rungbook.pack;

import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Pictures as data URIs, for the {@code img} element only: there a picture's own scripts and links are dead. */
final class Pictures {

  private static final Map<String, String> TYPES = Map.of("png", "image/png", "jpg", "image/jpeg", "jpeg", "image/jpeg",
      "gif", "image/gif", "webp", "image/webp", "svg", "image/svg+xml");

  private final Map<String, byte[]> byPath;

  Pictures(Map<String, byte[]> byPath) {
    this.byPath = byPath;
  }

  /** @param file the text that shows the picture @param target the picture's address as written there */
  Optional<String> dataUri(String file, String target) {
    String type = TYPES.get(target.substring(target.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    byte[] bytes = byPath.get(file.substring(0, file.lastIndexOf('/') + 1) + target);
    return type == null || bytes == null ? Optional.empty()
        : Optional.of("data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes));
  }
}
