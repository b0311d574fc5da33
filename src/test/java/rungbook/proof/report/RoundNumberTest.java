package rungbook.proof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.proof.accounting.ReportNumbers;

class RoundNumberTest {

  private static final BigDecimal TENTH = new BigDecimal("0.1");

  @Test
  void roundestNumberNearTheMiddleIsTaken() {
    assertEquals("20", number(18.5, 22.5));
    assertEquals("10", number(1.3, 14.6));
    assertEquals("23.2", number(23.0, 23.5));
    assertEquals("50", number(0.3, 110.5));
  }

  @Test
  void itIsInsideHoweverNarrow() {
    for (double low = 0.1; low < 500; low *= 1.37) {
      double high = low * 1.013;
      double round = RoundNumber.within(low, high, new BigDecimal("0.00001")).orElseThrow().doubleValue();
      assertTrue(low < round && round < high, low + " " + round + " " + high);
    }
  }

  /** A meter with a last digit of 0.1 shows 20.1 V next after 20.0 V. */
  @Test
  void itHasNoMoreDigitsThanTheMeter() {
    assertEquals("20.1", number(20.0, 20.1));
    assertEquals("20.3", number(20.24, 20.31));
    assertEquals(Optional.empty(), RoundNumber.within(20.01, 20.09, TENTH));
    assertEquals("20.5", ReportNumbers.number(RoundNumber.within(20.1, 20.6, new BigDecimal("0.5")).orElseThrow()));
  }

  @Test
  void anIntervalWithoutAnEndOrTurnedAroundHasNone() {
    assertEquals(Optional.empty(), RoundNumber.within(1, Double.POSITIVE_INFINITY, TENTH));
    assertEquals(Optional.empty(), RoundNumber.within(2, 1, TENTH));
  }

  private static String number(double low, double high) {
    return ReportNumbers.number(RoundNumber.within(low, high, TENTH).orElseThrow());
  }
}
