package rungbook.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.source.Source;
import rungbook.system.Quantity;
import rungbook.tree.reader.TreeReader;

/** Which way a reading takes, on a display of 0.1 V from 0 to 600 V unless a test says otherwise. */
class RoutingTest {

  private static Readings readings(String expect, String... answers) {
    return readings(Meter.common().scale(Quantity.AC_VOLTS).orElseThrow(), "AC volts", expect, answers);
  }

  private static Readings readings(Meter.Scale scale, String quantity, String expect, String... answers) {
    String text = "---\ntitle: t\ncomplaint: c\n---\n\n## Read\n\n```check\nmeasure: " + quantity
        + "\nleads: R, C\nexpect: " + expect + "\n```\n\n"
        + Arrays.stream(answers).map(answer -> "- " + answer + ": [Read](#read)\n").collect(Collectors.joining());
    TreeReader.Read read = SingleTree.read(new Source("trees/t.md", text));
    assertEquals(List.of(), read.problems());
    return Readings.of((Step.MeterCheck) read.tree().steps().get(0), scale);
  }

  private static int way(Readings readings, String volts) {
    return readings.wayOf(readings.shown(new BigDecimal(volts)).orElseThrow()).orElse(-1);
  }

  @Test
  void sharedEndBelongsToTheExpectedWindow() {
    Readings readings = readings("24 to 28", "24 to 28", "5 to 24", "0 to 5", "28 to 600");
    assertEquals(0, way(readings, "24"));
    assertEquals(0, way(readings, "28"));
    assertEquals(List.of(), readings.gaps());
  }

  @Test
  void sharedEndElseBelongsToTheUpperRange() {
    Readings readings = readings("100 to 120", "0 to 5", "5 to 24", "24 to 600");
    assertEquals(1, way(readings, "5"));
    assertEquals(2, way(readings, "24"));
  }

  @Test
  void singleValueOwnsItsReadingWhereverItStands() {
    Readings readings = readings("20 to 28", "0 to 24", "24", "24 to 600");
    assertEquals(0, way(readings, "23.9"));
    assertEquals(1, way(readings, "24"));
    assertEquals(2, way(readings, "24.1"));
  }

  @Test
  void orLessInTheWindowKeepsItsEnd() {
    Readings readings = readings("5 or less", "5 or less", "5 or more");
    assertEquals(0, way(readings, "5"));
    assertEquals(1, way(readings, "5.1"));
    assertEquals(OptionalInt.of(1), readings.wayOfOverload());
  }

  @Test
  void underAndOverLeaveTheSingleReadingBetween() {
    Readings readings = readings("over 24", "over 24", "under 24");
    assertEquals(List.of("24.0 V"), readings.gaps().stream().map(readings::show).toList());
  }

  @Test
  void gapNarrowerThanTheLastDigitIsNone() {
    Readings readings = readings("24 to 28", "24.05 to 28", "under 24.02", "over 28");
    assertEquals(List.of(), readings.gaps());
    assertEquals(1, way(readings, "24"));
    assertEquals(0, way(readings, "24.1"));
  }

  @Test
  void stepsOfHalfADigitMeetBetweenTwoReadings() {
    Readings readings = readings("20 to 28", "20.05 to 600", "10.05 to 20.05", "0 to 10.05");
    assertEquals(List.of(), readings.gaps());
    assertEquals(List.of(1, 0, 2, 1),
        List.of(way(readings, "20"), way(readings, "20.1"), way(readings, "10"), way(readings, "10.1")));
  }

  /** The interval that Rust's range patterns report: {@code 0..=31} alone leaves {@code 32..=255} of a byte. */
  @Test
  void intervalLeftOfAByte() {
    var bytes = new Meter.Scale(BigDecimal.ZERO, new BigDecimal(255), BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE,
        Optional.empty());
    Readings readings = readings(bytes, "AC volts", "0 to 31", "0 to 31");
    assertEquals(List.of(new Readings.Stretch(32, 255)), readings.gaps());
    assertEquals("over 31 V", readings.show(readings.gaps().get(0)));
  }

  @Test
  void anythingElseTakesWhatIsLeft() {
    Readings readings = readings("24 to 28", "24 to 28", "anything else", "no reading");
    assertEquals(1, way(readings, "12"));
    assertEquals(OptionalInt.of(1), readings.wayOfOverload());
    assertEquals(OptionalInt.of(2), readings.wayOfNoReading());
    assertEquals(List.of(), readings.gaps());
  }

  @Test
  void unitsStandOnceOrAtEveryNumberInAnyCase() {
    Meter.Scale ohms = Meter.common().scale(Quantity.OHMS).orElseThrow();
    Readings readings = readings(ohms, "ohms", "8 to 20 ohm", "8 ohm to 20 ohm", "Under 8", "20 ohm to 2 kohm",
        "OVER 2 kΩ", "ol");
    assertEquals(List.of(0, 1, 2, 3),
        List.of(way(readings, "8"), way(readings, "7.9"), way(readings, "1999.9"), way(readings, "2000.1")));
    assertEquals(OptionalInt.of(4), readings.wayOfOverload());
  }

  @Test
  void degreesOfBothKindsAreRead() {
    Meter.Scale degrees = Meter.common().scale(Quantity.TEMPERATURE).orElseThrow();
    Readings readings = readings(degrees, "temperature", "20 to 25 C", "20 to 25 C", "under 68 F", "over 77");
    assertEquals(List.of(0, 1, 0, 2),
        List.of(way(readings, "68"), way(readings, "67.9"), way(readings, "77"), way(readings, "77.1")));
  }

  @Test
  void numbersFarBeyondAnyMeterCostNothing() {
    Readings readings = readings("24 to 28", "24 to 28", "under 24", "28 V to 99999999999999999999 kV");
    assertEquals(2, way(readings, "600"));
    assertTrue(readings.shown(new BigDecimal("99999999999999999999")).isEmpty());
  }
}
