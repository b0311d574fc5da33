package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.Zone;

/** What readings mean, by the table that the script is tested with too. */
class TypedReadingsTest {

  static List<ReadingCases.Case> readings() {
    return ReadingCases.all().stream().filter(ReadingCases.Case::isReading).toList();
  }

  @ParameterizedTest
  @MethodSource("readings")
  void readingMeansWhatTheTableSays(ReadingCases.Case one) {
    assertEquals(one.outcome(), one.check().outcome(zone(one.check().zones(), one.reading())));
  }

  /** The zones say the same as the definition behind them, at both ends of each. */
  @ParameterizedTest
  @MethodSource("readings")
  void zonesBeginWhereTheMeaningChanges(ReadingCases.Case one) {
    ReadingZones zones = one.check().zones();
    List<Zone> all = zones.all();
    for (int i = 1; i < all.size(); i++) {
      assertEquals(all.get(i), zones.at(all.get(i).from()));
      assertEquals(one.check().outcome(all.get(i - 1)), one.check().outcome(zones.at(all.get(i).from() - 1)));
    }
  }

  @Test
  void everyMeaningHasACase() {
    assertTrue(ReadingCases.haveAll(readings()));
  }

  private static Zone zone(ReadingZones zones, String reading) {
    return reading.equals("OL") ? zones.overload()
        : zones.at(new BigDecimal(reading).divide(zones.readings().digit(), 0, RoundingMode.HALF_UP).longValueExact());
  }
}
