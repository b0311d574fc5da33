package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DecodingTest {

  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  @Test
  void byteOrderMarkIsDropped() {
    Decoding.Decoded decoded = Decoding.decode("x.md", join(MARK, "## 80 \u00b0F".getBytes(StandardCharsets.UTF_8)));
    assertTrue(decoded.problem().isEmpty());
    assertEquals("## 80 \u00b0F", decoded.source().text());
  }

  @Test
  void badByteIsReportedAtItsPlace() {
    Problem problem = Decoding
        .decode("x.md", join(MARK, "one\n\u00e9t".getBytes(StandardCharsets.UTF_8), new byte[] {(byte) 0xB0, 'F'}))
        .problem().orElseThrow();
    assertEquals("not-utf8", problem.code().name());
    assertEquals("B0", problem.facts().get("byte"));
    assertEquals(new Place(2, 3), problem.place());
  }

  @Test
  void letterCutOffAtTheEndIsABadByte() {
    Problem problem = Decoding.decode("x.md", new byte[] {'a', (byte) 0xC3}).problem().orElseThrow();
    assertEquals("C3", problem.facts().get("byte"));
  }

  @Test
  void tooLargeAFileIsRefusedUnread() {
    Decoding.Decoded decoded = Decoding.decode("x.md", new byte[Decoding.MOST_BYTES + 1]);
    assertEquals("file-too-large", decoded.problem().orElseThrow().code().name());
    assertEquals("", decoded.source().text());
    assertTrue(Decoding.decode("x.md", new byte[Decoding.MOST_BYTES]).problem().isEmpty());
  }

  private static byte[] join(byte[]... parts) {
    var out = new java.io.ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }
}
