package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.pack.Verify.Flaw;
import rungbook.pack.Verify.Verdict;
import rungbook.pack.page.Edition;

class VerifyTest {

  /** For what is done to hundreds of its bytes: a step of each kind, and a third of the size. */
  private static final Pack SMALL = Samples.example();

  private final Pack pack = Samples.starter("no-cooling-blower-runs");

  @Test
  void packAsWrittenIsIntactAndSaysWhichItIs() {
    var edition = new Edition(Optional.of("4"), Optional.of(LocalDate.of(2026, 3, 1)), Optional.empty());
    Pack released = Samples.pack(Samples.STARTER.tree("no-cooling-blower-runs").orElseThrow().tree(),
        edition);
    Verdict.Intact intact = assertInstanceOf(Verdict.Intact.class, Verify.of(released.bytes()));
    assertEquals(released.digest(), intact.digest());
    assertEquals("no-cooling-blower-runs.html", intact.file());
    assertEquals(released.title(), intact.title());
    assertEquals("4", intact.cells().get("Revision"));
    assertEquals("March 1, 2026", intact.cells().get("Released"));
  }

  /** The digest as anybody can work it out: zeros in its places, then SHA-256. */
  @Test
  void digestIsTheSha256OfTheFileWithItsPlacesBlank() throws Exception {
    assertEquals(pack.digest(), Forgery.digest(Samples.text(pack.inFolder()), pack.digest()));
  }

  /** 24 hexadecimal digits are 96 bits. */
  @Test
  void shortDigestIsTheFirst24DigitsInGroupsOfFour() {
    assertTrue(pack.shortDigest().matches("([0-9a-f]{4} ){5}[0-9a-f]{4}"), pack.shortDigest());
    assertEquals(pack.digest().substring(0, 24), pack.shortDigest().replace(" ", ""));
  }

  @Test
  void oneChangedLimitIsSeen() {
    assertEquals(new Verdict.Altered(Flaw.CONTENT),
        verify(Samples.text(pack.inFolder()).replaceFirst("V</u>", "W</u>")));
  }

  @Test
  void oneChangedByteAnywhereIsSeen() {
    for (int at = 0; at < SMALL.bytes().length; at += 397) {
      byte[] changed = SMALL.bytes().clone();
      changed[at] ^= 1;
      assertEquals(false, Verify.of(changed) instanceof Verdict.Intact, "byte " + at);
    }
  }

  @Test
  void anotherShortDigestOnThePageIsSeen() {
    String other = "1234 5678 1234 5678 1234 5678";
    assertEquals(new Verdict.Altered(Flaw.SHORT_DIGEST),
        verify(Samples.text(pack.inFolder()).replace(pack.shortDigest(), other)));
  }

  @Test
  void cutOffFileIsSeen() {
    String page = Samples.text(pack.inFolder());
    assertInstanceOf(Verdict.Altered.class, verify(page.substring(0, page.length() / 2)));
  }

  @Test
  void otherFilesAreNoPacks() {
    assertInstanceOf(Verdict.NotAPack.class, Verify.of(new byte[0]));
    assertInstanceOf(Verdict.NotAPack.class, Verify.of(new byte[] {(byte) 0xff, 0, 1}));
    assertInstanceOf(Verdict.NotAPack.class, verify("<!doctype html><title>Something else</title>"));
  }

  @Test
  void everyByteRoundTheDigestsCounts() {
    for (String digest : List.of(SMALL.digest(), SMALL.shortDigest())) {
      int at = Samples.text(SMALL.inFolder()).indexOf(digest);
      for (int byteAt = at - 80; byteAt < at + digest.length() + 80; byteAt++) {
        byte[] changed = SMALL.bytes().clone();
        changed[Math.max(0, byteAt)] ^= 1;
        assertFalse(Verify.of(changed) instanceof Verdict.Intact, "byte " + byteAt);
      }
    }
  }

  private static Verdict verify(String text) {
    return Verify.of(text.getBytes(StandardCharsets.UTF_8));
  }
}
