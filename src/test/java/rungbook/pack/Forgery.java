package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What somebody can do who changes a pack on purpose: they know how the digest is made, and make it anew. */
final class Forgery {

  private Forgery() {}

  /** The SHA-256 of a page with zeros wherever a digest is written, worked out apart from the program. */
  static String digest(String page, String written) {
    String blank = page.replace(written, "0".repeat(64)).replace(grouped(written), grouped("0".repeat(64)));
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(blank.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A changed page with its new digest in all places of the old one. */
  static byte[] sealed(String changed, String written) {
    String digest = digest(changed, written);
    return changed.replace(written, digest).replace(grouped(written), grouped(digest)).getBytes(StandardCharsets.UTF_8);
  }

  static String grouped(String digest) {
    return String.join(" ", digest.substring(0, 24).split("(?<=\\G.{4})"));
  }
}
