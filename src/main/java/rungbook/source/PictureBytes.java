package rungbook.source;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The first bytes of a picture, by its kind. */
public final class PictureBytes {

  // PNG: RFC 2083, 3.1. JPEG: ITU-T T.81, B.1.1.3 (SOI and the next marker). WebP: RFC 9649, 2.4. All from memory.
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte[] PNG_HEADER = {0, 0, 0, 13, 'I', 'H', 'D', 'R'};
  private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

  private PictureBytes() {}

  /** Whether the bytes begin as those of a picture of that kind do. */
  public static boolean fit(PictureKind kind, byte[] content) {
    return switch (kind) {
      case PNG -> has(content, 0, PNG) && has(content, PNG.length, PNG_HEADER);
      case JPEG -> has(content, 0, JPEG);
      case GIF -> has(content, 0, latin("GIF87a")) || has(content, 0, latin("GIF89a"));
      case WEBP -> has(content, 0, latin("RIFF")) && has(content, 8, latin("WEBP"));
      case SVG -> isSvg(new String(content, StandardCharsets.UTF_8));
    };
  }

  private static boolean isSvg(String text) {
    var start = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return start.stripLeading().startsWith("<") && start.contains("<svg");
  }

  private static boolean has(byte[] content, int at, byte[] signature) {
    return content.length >= at + signature.length
        && Arrays.equals(content, at, at + signature.length, signature, 0, signature.length);
  }

  private static byte[] latin(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
