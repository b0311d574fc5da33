package rungbook.pack.signature;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The blocks of a key file: the textual encodings of RFC 7468, as most programs write keys. */
final class KeyText {

  static final String PRIVATE = "PRIVATE KEY";
  static final String PUBLIC = "PUBLIC KEY";
  static final String ENCRYPTED = "ENCRYPTED PRIVATE KEY";

  private static final Pattern BLOCK = Pattern
      .compile("-----BEGIN ([A-Z0-9 ]{1,40})-----\\s([A-Za-z0-9+/=\\s]{1,9000})-----END \\1-----");

  private static final Base64.Encoder LINES = Base64.getMimeEncoder(64, new byte[] {'\n'});

  private KeyText() {}

  /** The bytes of the first block of this kind. */
  static Optional<byte[]> block(String kind, String text) {
    Matcher blocks = BLOCK.matcher(text.substring(0, Math.min(text.length(), SigningKey.MOST_FILE_BYTES)));
    while (blocks.find()) {
      if (blocks.group(1).equals(kind)) {
        return bytes(blocks.group(2));
      }
    }
    return Optional.empty();
  }

  private static Optional<byte[]> bytes(String base64) {
    try {
      return Optional.of(Base64.getMimeDecoder().decode(base64.strip()));
    } catch (IllegalArgumentException cutOff) {
      return Optional.empty();
    }
  }

  static String written(String kind, byte[] key) {
    return "-----BEGIN " + kind + "-----\n" + new String(LINES.encode(key), StandardCharsets.US_ASCII) + "\n-----END "
        + kind + "-----\n";
  }
}
