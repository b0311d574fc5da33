package rungbook.pack.page;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Pattern;
import rungbook.text.Sha256;

/**
 * A pack's digest: SHA-256 over the file's bytes with zeros in the two places of the digest itself. It is written in
 * full in the head, and in short in the title block, where people read it; {@link PageForm} knows the places.
 */
public final class Digest {

  /**
   * Digits of the short form: 96 bits. another file with the same short digest takes some 2^96 tries; at a million
   * million tries a second, that is over two thousand million years.
   */
  private static final int SHORT = 24;

  private static final Pattern GROUP = Pattern.compile("(.{4})(?=.)");

  /** What is in the places while the digest is computed. */
  public static final String BLANK = "0".repeat(64);

  private Digest() {}

  /** The short form in one piece, as in file names. */
  public static String shortened(String digest) {
    return digest.substring(0, SHORT);
  }

  /** The short form in six groups of four, as people compare it. */
  public static String grouped(String digest) {
    return GROUP.matcher(shortened(digest)).replaceAll("$1 ");
  }

  /** A source of a content security policy: {@code 'sha256-…'}. */
  static String policySource(String text) {
    return "'sha256-" + Base64.getEncoder().encodeToString(Sha256.of(text.getBytes(StandardCharsets.UTF_8))) + "'";
  }
}
