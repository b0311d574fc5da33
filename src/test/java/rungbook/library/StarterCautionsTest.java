package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The figures in the starter library's cautions, and where they come from. */
class StarterCautionsTest {

  static List<Path> texts() throws IOException {
    try (Stream<Path> cautions = Files.list(Path.of("shared/cautions"));
        Stream<Path> qualifications = Files.list(Path.of("shared/qualifications"))) {
      return Stream.concat(cautions, qualifications).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("texts")
  void endsWithItsSources(Path text) throws IOException {
    List<String> lines = Files.readAllLines(text);
    assertTrue(lines.get(lines.size() - 1).matches("\\*Sources?[:,] .*\\*"), () -> text.toString());
  }

  /** The law of the discharging capacitor, t = R C ln(V / 1 V), with the peak of 370 V rms. */
  @Test
  void theTimesOfADischargeAreComputed() throws IOException {
    String text = read("stored-charge");
    double ohms = 1000 * number("insulated (\\d+) kΩ", text);
    assertEquals(370 * Math.sqrt(2), number("From (\\d+) V", text), 0.5);
    assertEquals(seconds(ohms, 40e-6), number("takes ([0-9.]+) s with 40 µF", text), 0.05);
    assertEquals(seconds(ohms, 80e-6), number("and ([0-9.]+) s with 80 µF", text), 0.05);
  }

  @ParameterizedTest
  @ValueSource(strings = {"shared/cautions/stored-charge.md", "shared/fragments/make-outdoor-unit-dead.md"})
  void theTimeToHoldTheResistorLeavesHalfAgainAsMargin(String file) throws IOException {
    String text = Files.readString(Path.of(file));
    assertTrue(number("resistor(?: for|,) (\\d+) seconds", text) >= 1.5 * seconds(20e3, 80e-6));
  }

  private static double seconds(double ohms, double farads) {
    return ohms * farads * Math.log(523 / 1.0);
  }

  private static double number(String pattern, String text) {
    Matcher match = Pattern.compile(pattern).matcher(text);
    assertTrue(match.find(), pattern);
    return Double.parseDouble(match.group(1));
  }

  private static String read(String caution) throws IOException {
    return Files.readString(Path.of("shared/cautions", caution + ".md"));
  }
}
