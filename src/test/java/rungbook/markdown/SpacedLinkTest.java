package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpacedLinkTest {

  /** What is meant, as a pattern; it takes cubic time, so it only judges short lines. */
  private static final Pattern MEANT = Pattern.compile("\\[[^\\]]*]\\([^)]* [^)]*\\)");

  @Test
  void findsWhatThePatternFinds() {
    var random = new Random(1);
    for (int i = 0; i < 200_000; i++) {
      String line = random.ints(random.nextInt(14), 0, 6).mapToObj(c -> "[]() x".substring(c, c + 1)).reduce("",
          String::concat);
      assertEquals(MEANT.matcher(line).find(), SpacedLink.isIn(line), line);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"[](                     ", "](", "[](", "[]( ", "[ ](a", "[]()", "[a](b) ", " ", ")"})
  void longLinesTakeAMoment(String shape) {
    String line = shape.repeat(4_000_000 / shape.length());
    assertTimeoutPreemptively(Duration.ofSeconds(10), () -> SpacedLink.isIn(line));
  }
}
