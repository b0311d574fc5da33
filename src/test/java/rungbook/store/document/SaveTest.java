package rungbook.store.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SaveTest {
  private static final DocumentPath TREE = new DocumentPath("trees/a.md");
  private static final DocumentPath PICTURE = new DocumentPath("trees/a.png");

  @Test
  void aTextIsNoPicture() {
    assertRefused("the name of a picture", () -> Save.text(PICTURE, 0, "text", "Odalys", ""));
    assertRefused("is no PNG picture", () -> Save.written(PICTURE, 0, "text".getBytes(UTF_8), "Odalys", ""));
  }

  @Test
  void halfACharacterIsRefusedAndNotReplaced() {
    assertRefused("half of a character", () -> Save.text(TREE, 0, "a\ud83d b", "Odalys", ""));
    assertRefused("half of a character", () -> Save.text(TREE, 0, "a", "Od\udc00alys", ""));
    assertRefused("not UTF-8", () -> Save.written(TREE, 0, new byte[] {'a', (byte) 0xfc}, "Odalys", ""));
    assertEquals("\ud83d\udd27", new String(Save.text(TREE, 0, "\ud83d\udd27", "Odalys", "").content(), UTF_8));
  }

  @Test
  void whatIsLargerThanTheLimitIsRefusedAsTooLarge() {
    Save.written(TREE, 0, new byte[StoreLimits.TEXT], "Odalys", "");
    assertThrows(Refused.TooLarge.class, () -> Save.written(TREE, 0, new byte[StoreLimits.TEXT + 1], "Odalys", ""));
    assertThrows(Refused.TooLarge.class,
        () -> Save.written(PICTURE, 0, new byte[StoreLimits.PICTURE + 1], "Odalys", ""));
  }

  @Test
  void authorAndMessageAreOneLineEachAndBounded() {
    var save = Save.text(TREE, 0, "x", " Odalys\n Fernhollow ", null);
    assertEquals("Odalys  Fernhollow", save.author());
    assertEquals("", save.message());
    assertRefused("needs the name", () -> Save.text(TREE, 0, "x", " \u0000 ", ""));
    assertRefused("longer than 100", () -> Save.text(TREE, 0, "x", "x".repeat(101), ""));
    assertRefused("longer than 500", () -> Save.text(TREE, 0, "x", "x", "x".repeat(501)));
    assertRefused("no text", () -> Save.text(TREE, 0, null, "x", ""));
  }

  private static void assertRefused(String says, org.junit.jupiter.api.function.Executable save) {
    var refused = assertThrows(Refused.class, save);
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }
}
