package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A pack's digest: SHA-256 over the file's bytes with the places where the digest itself stands filled with zeros. It is
 * written in full once, and in short wherever people read it. Text of a tree cannot look like such a place: it is escaped.
 */
final class Digest {

  private static final int SHORT = 8;
  private static final String META = "<meta name=\"rungbook-digest\" content=\"";
  private static final Pattern FULL_PLACE = Pattern.compile("(?<=" + META + ")[0-9a-f]{64}(?=\">)");
  private static final Pattern SHORT_PLACE = Pattern.compile("(?<=<code class=\"digest\">)[0-9a-f]{" + SHORT + "}(?=</code>)");

  private Digest() {}

  /** The first eight letters, as people compare them. */
  static String shortened(String digest) {
    return digest.substring(0, SHORT);
  }

  /** The place for the whole digest, still empty. */
  static String fullPlace() {
    return META + "0".repeat(64) + "\">";
  }

  /** A place for the short digest, still empty. */
  static String shortPlace() {
    return "<code class=\"digest\">" + "0".repeat(SHORT) + "</code>";
  }

  static String of(byte[] file) {
    return hex(sha256(latin(blanked(latin(file)))));
  }

  /** Fills every place in. */
  static byte[] fill(byte[] file, String digest) {
    return latin(written(latin(file), digest, shortened(digest)));
  }

  /** The digest that a file says it has; empty if it is no pack. */
  static Optional<String> claimed(byte[] file) {
    return FULL_PLACE.matcher(latin(file)).results().map(found -> found.group()).findFirst();
  }

  /** Whether every short digest that people would read is the start of this one. */
  static boolean isShown(byte[] file, String digest) {
    return SHORT_PLACE.matcher(latin(file)).results().allMatch(found -> digest.startsWith(found.group()));
  }

  /** A source of a content security policy: {@code 'sha256-…'}. */
  static String policySource(String text) {
    return "'sha256-" + Base64.getEncoder().encodeToString(sha256(text.getBytes(StandardCharsets.UTF_8))) + "'";
  }

  /** SHA-256 as 64 hexadecimal digits. */
  static String hex(byte[] sha256) {
    return HexFormat.of().formatHex(sha256);
  }

  static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String blanked(String file) {
    return written(file, "0".repeat(64), "0".repeat(SHORT));
  }

  private static String written(String file, String full, String shortened) {
    return SHORT_PLACE.matcher(FULL_PLACE.matcher(file).replaceFirst(full)).replaceAll(shortened);
  }

  /** Byte for byte, so that a file of any bytes can be looked at as text. */
  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] latin(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
