package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Beside the JDK's own formatter, which rounds half up. */
class DecimalsTest {

  @Test
  void roundsAsTheFormatterDoes() {
    var random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      double number = random.nextInt(4) == 0 ? random.nextInt(4_000) / 20.0 : random.nextDouble() * 500;
      assertEquals(String.format(Locale.ROOT, "%.1f", number), Decimals.rounded(number, 1));
      assertEquals(String.format(Locale.ROOT, "%.0f", number), Decimals.rounded(number, 0));
    }
  }
}
