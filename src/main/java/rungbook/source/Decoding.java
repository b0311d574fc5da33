package rungbook.source;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Decodes bytes as UTF-8. Drops a byte order mark; invalid UTF-8 is a problem at its place. */
public final class Decoding {

  static final Code FILE_TOO_LARGE = Code.of("file-too-large");
  static final Code NOT_UTF8 = Code.of("not-utf8");

  /** In bytes; a larger file is rejected before it is decoded. */
  public static final int MOST_BYTES = 4 * 1024 * 1024;

  private static final char REPLACEMENT = '\uFFFD';
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private Decoding() {}

  /** @param problem why the text cannot be read; the source then holds the text up to there */
  public record Decoded(Source source, Optional<Problem> problem) {}

  public static Decoded decode(String name, byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      return refused(tooLarge(name, bytes.length));
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    return text.indexOf(REPLACEMENT) < 0 ? new Decoded(new Source(name, withoutMark(text)), Optional.empty())
        : decodeStrictly(name, bytes);
  }

  /** Slower; for text with the replacement character, which is either in the file or a result of decoding. */
  private static Decoded decodeStrictly(String name, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
    CharBuffer chars = CharBuffer.allocate(bytes.length);
    boolean malformed = decoder.decode(ByteBuffer.wrap(bytes), chars, true).isError();
    Source source = new Source(name, withoutMark(chars.flip().toString()));
    return malformed ? refused(notText(source, bytes)) : new Decoded(source, Optional.empty());
  }

  /** The problem of a file that is larger than {@link #MOST_BYTES}; its text is not kept. */
  public static Problem tooLarge(String name, long bytes) {
    return Problem.at(FILE_TOO_LARGE, new Source(name, ""), Span.at(0)).with("size", megabytes(bytes)).with("most",
        megabytes(MOST_BYTES));
  }

  private static Decoded refused(Problem problem) {
    return new Decoded(problem.source(), Optional.of(problem));
  }

  private static Problem notText(Source source, byte[] bytes) {
    int at = source.text().getBytes(StandardCharsets.UTF_8).length + (hasMark(bytes) ? 3 : 0);
    return Problem.at(NOT_UTF8, source, Span.at(source.text().length())).with("byte", String.format("%02X", bytes[at]));
  }

  private static boolean hasMark(byte[] bytes) {
    return bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private static String megabytes(long bytes) {
    return String.format(Locale.ROOT, "%.1f MB", bytes / 1048576.0);
  }
}
