package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import rungbook.pack.Verify.Verdict;

class VerifyTest {

  private final Pack pack = Samples.starter("no-cooling-blower-runs");

  @Test
  void packAsWrittenIsIntact() {
    assertEquals(new Verdict.Intact(pack.digest()), Verify.of(pack.bytes()));
  }

  /** The digest as anybody can work it out: zeros in its places, then SHA-256. */
  @Test
  void digestIsTheSha256OfTheFileWithItsPlacesBlank() throws Exception {
    String blank = pack.inFolder().text().replace(pack.digest(), "0".repeat(64)).replace(pack.digest().substring(0, 8), "00000000");
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(blank.getBytes(StandardCharsets.UTF_8));
    assertEquals(pack.digest(), HexFormat.of().formatHex(hash));
  }

  @Test
  void oneChangedLimitIsSeen() {
    assertInstanceOf(Verdict.Altered.class, verify(pack.inFolder().text().replaceFirst("V</u>", "W</u>")));
  }

  @Test
  void oneChangedByteAnywhereIsSeen() {
    for (int at = 0; at < pack.bytes().length; at += 997) {
      byte[] changed = pack.bytes().clone();
      changed[at] ^= 1;
      assertEquals(false, Verify.of(changed) instanceof Verdict.Intact, "byte " + at);
    }
  }

  @Test
  void anotherShortDigestOnThePageIsSeen() {
    String shown = pack.digest().substring(0, 8);
    assertInstanceOf(Verdict.Altered.class, verify(pack.inFolder().text().replace(">" + shown + "<", ">12345678<")));
  }

  @Test
  void cutOffFileIsSeen() {
    String page = pack.inFolder().text();
    assertInstanceOf(Verdict.Altered.class, verify(page.substring(0, page.length() / 2)));
  }

  @Test
  void otherFilesAreNoPacks() {
    assertInstanceOf(Verdict.NotAPack.class, Verify.of(new byte[0]));
    assertInstanceOf(Verdict.NotAPack.class, Verify.of(new byte[] {(byte) 0xff, 0, 1}));
    assertInstanceOf(Verdict.NotAPack.class, verify("<!doctype html><title>Something else</title>"));
  }

  private static Verdict verify(String text) {
    return Verify.of(text.getBytes(StandardCharsets.UTF_8));
  }
}
