package rungbook.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.source.Code;
import rungbook.source.Wording;

class RulePageTest {

  private static final String PAGE = RulePage.of(Wording.of(Code.of("reading-gap")), Style.PLAIN);

  @Test
  void aPageStartsWithSeverityCodeAndSentence() {
    assertTrue(PAGE.startsWith("error reading-gap: "));
  }

  @Test
  void anExampleIsIndentedAndKeepsItsOwnFences() {
    assertTrue(PAGE.contains("\n    ```check\n"));
    assertFalse(PAGE.contains("~~~"));
  }
}
