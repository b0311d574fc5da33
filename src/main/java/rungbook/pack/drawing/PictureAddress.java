package rungbook.pack.drawing;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungbook.source.PictureKind;

/** A picture as the address of an {@code img}: the picture itself, as a data URI (RFC 2397). */
public final class PictureAddress {

  private static final Pattern VALUE = Pattern.compile("=\"([^\"<]*+)\"");

  private PictureAddress() {}

  /** A drawing stays text, which a file that is packed for sending makes much smaller than base64. */
  public static String of(PictureKind kind, byte[] bytes) {
    Optional<String> drawing = kind == PictureKind.SVG ? utf8(bytes) : Optional.empty();
    return "data:" + kind.mediaType() + drawing.map(text -> "," + escaped(text))
        .orElseGet(() -> ";base64," + Base64.getEncoder().encodeToString(bytes));
  }

  /** Empty for bytes that are no UTF-8, and for a text that says it is in another encoding. */
  private static Optional<String> utf8(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text).filter(svg -> !svg.contains("encoding="));
    } catch (CharacterCodingException other) {
      return Optional.empty();
    }
  }

  /** XML takes either quote around a value; one of them needs no escape in an attribute of HTML. */
  private static String escaped(String svg) {
    String quoted = svg.indexOf('\'') < 0 ? VALUE.matcher(svg).replaceAll("='$1'") : svg;
    return quoted.codePoints().mapToObj(PictureAddress::escaped).collect(Collectors.joining());
  }

  /** What an address may not have, and what HTML would read as its own. */
  private static String escaped(int c) {
    if (c >= ' ' && c < 0x7F && "\"#%<>&".indexOf(c) < 0) {
      return Character.toString(c);
    }
    var out = new StringBuilder();
    for (byte b : Character.toString(c).getBytes(StandardCharsets.UTF_8)) {
      out.append('%').append("0123456789ABCDEF".charAt(b >> 4 & 15)).append("0123456789ABCDEF".charAt(b & 15));
    }
    return out.toString();
  }
}
