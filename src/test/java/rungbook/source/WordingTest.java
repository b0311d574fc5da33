package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class WordingTest {

  private static final Wording WORDING = Wording.read(Code.of("unknown-leg"), """
      ---
      severity: warning
      says: no leg is called `{leg}`: {why}
      hint: use one of {known}
      near: write `{near}`
      ---
      # Unknown leg
      """);
  private static final Problem PROBLEM = Problem.at(Code.of("unknown-leg"), new Source("x.md", ""), Span.at(0))
      .with("leg", "$1 {near}").with("why", "so")
      .with("known", "L1, L2");

  @Test
  void fillsBlanksWithFactsAsTheyAre() {
    assertEquals("no leg is called `$1 {near}`: so", WORDING.sentence(PROBLEM));
    assertEquals("# Unknown leg\n", WORDING.page());
    assertEquals(Severity.WARNING, WORDING.severity());
  }

  @Test
  void hintNamesTheNearestWhenThereIsOne() {
    assertEquals("use one of L1, L2", WORDING.hint(PROBLEM));
    assertEquals("write `L1`", WORDING.hint(PROBLEM.near("L9", Optional.of("L1"))));
  }

  @Test
  void unknownCodesHaveNoPage() {
    assertTrue(Wording.find("no-such-code").isEmpty());
    assertTrue(Wording.find("../application").isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Wording.of(Code.of("no-such-code")));
  }
}
