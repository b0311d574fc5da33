package rungbook.store.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NameKeyTest {
  @ParameterizedTest
  @CsvSource({"trees/Case.md, trees/case.md", "trees/CASE.MD, trees/case.md", "trees/x  y.md, trees/x y.md",
      "trees/caf\u00e9.md, trees/cafe\u0301.md", "trees/STRASSE.md, trees/stra\u00dfe.md",
      "trees/A/b.md, trees/a/B.md"})
  void whatIsOneFileOnSomeComputerHasOneKey(String one, String other) {
    assertEquals(key(one), key(other));
  }

  @Test
  void otherNamesHaveOtherKeys() {
    assertNotEquals(key("trees/a.md"), key("trees/b.md"));
    assertNotEquals(key("trees/cafe.md"), key("trees/caf\u00e9.md"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"trees/CON.md", "trees/nul.md", "trees/Aux.extra.md", "trees/com1/a.md", "trees/lpt9.png",
      "trees/cafe\u0301.md", "trees/a .md"})
  void aNewNameThatNotEverySystemKeepsIsRefused(String path) {
    var taken = new DocumentPath(path);
    assertThrows(Refused.class, () -> NameKey.ofNew(taken));
  }

  @ParameterizedTest
  @ValueSource(strings = {"trees/console.md", "trees/com10.md", "trees/con-trol.md", "trees/caf\u00e9.md"})
  void aNameThatOnlyLooksLikeOneIsTaken(String path) {
    assertEquals(key(path), NameKey.ofNew(new DocumentPath(path)));
  }

  private static NameKey key(String path) {
    return NameKey.of(new DocumentPath(path));
  }
}
