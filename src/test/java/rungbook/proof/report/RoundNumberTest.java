package rungbook.proof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.proof.accounting.ReportNumbers;

class RoundNumberTest {

  @Test
  void roundestNumberNearTheMiddleIsTaken() {
    assertEquals("20", ReportNumbers.number(RoundNumber.within(18.5, 22.5)));
    assertEquals("10", ReportNumbers.number(RoundNumber.within(1.3, 14.6)));
    assertEquals("23.2", ReportNumbers.number(RoundNumber.within(23.0, 23.5)));
    assertEquals("50", ReportNumbers.number(RoundNumber.within(0.3, 110.5)));
  }

  @Test
  void itIsInsideHoweverNarrow() {
    for (double low = 0.1; low < 500; low *= 1.37) {
      double high = low * 1.013;
      double round = RoundNumber.within(low, high).doubleValue();
      assertTrue(low < round && round < high, low + " " + round + " " + high);
    }
  }
}
