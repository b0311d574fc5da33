package rungbook.store.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentPathTest {
  @ParameterizedTest
  @ValueSource(strings = {"trees/no-cooling.md", "trees/rooftop/no heat (2).md", "shared/cautions/gas.md",
      "trees/pictures/board.PNG", "company.md", "trees/kein-kühlen.md", "shared/fragments/dead/strip.svg",
      "shared/qualifications/epa-608.md", "shared/words.md"})
  void aPlaceInTheLibraryIsTaken(String path) {
    assertEquals(path, new DocumentPath(path).text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "/", "trees", "trees/", "trees//a.md", "trees/../a.md", "../trees/a.md", "/trees/a.md",
      "trees/.hidden.md", "trees\\a.md", "trees/a.md ", "trees/a.exe", "trees/a", "shared/a.md", "shared/other/a.md",
      "trees/a\u0000.md", "trees/a\n.md", "trees/a?.md", "trees/a#b.md", "trees/<b>.md", "C:/trees/a.md",
      "trees/-a.md", "trees/a./b.md", "trees/%2e%2e/a.md", "other.md"})
  void anythingElseIsRefused(String path) {
    assertThrows(Refused.class, () -> new DocumentPath(path));
  }

  @Test
  void anEndlessNameIsRefused() {
    assertThrows(Refused.class, () -> new DocumentPath("trees/" + "a".repeat(200) + ".md"));
  }

  @Test
  void treesAndPicturesAreToldApart() {
    assertTrue(new DocumentPath("trees/a.md").isTree());
    assertFalse(new DocumentPath("trees/a.png").isTree());
    assertTrue(new DocumentPath("trees/a.JPG").isPicture());
    assertFalse(new DocumentPath("shared/meters/a.md").isTree());
  }
}
