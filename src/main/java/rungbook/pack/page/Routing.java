package rungbook.pack.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.Zone;
import rungbook.tree.Readings;

/**
 * What each reading means and which way it leads, for the pack's script: records apart by semicolons, their fields by
 * commas. JSON would double its size, since an attribute has to escape every quote.
 *
 * <p>A reading is counted in the last digits of the meter's display. The first record is {@code step,decimals,signed}:
 * a count is {@code step}·10^-{@code decimals} of the unit, and {@code signed} is 1 where the display has a minus
 * sign. The others are zones from low to high, {@code from,meaning,way}, and about a limit {@code from,meaning,lower
 * way,upper way,limit}; the lowest has no {@code from}. {@code OL} stands for the display's overload, {@code unsteady}
 * for one that does not settle, which is left out where no way takes it.
 */
final class Routing {

  private Routing() {}

  static String of(ReadingZones zones) {
    Readings readings = zones.readings();
    BigDecimal digit = readings.digit().stripTrailingZeros();
    BigDecimal step = digit.scale() < 0 ? digit.setScale(0) : digit;
    List<Zone> all = zones.all();
    var records = new ArrayList<String>();
    records.add(step.unscaledValue() + "," + step.scale() + "," + (readings.lowCount() < 0 ? 1 : 0));
    records.add(written("", all.get(0)));
    all.stream().skip(1).forEach(zone -> records.add(written(String.valueOf(zone.from()), zone)));
    records.add(written("OL", zones.overload()));
    if (!zones.noReading().ways().isEmpty()) {
      records.add(written("unsteady", zones.noReading()));
    }
    return String.join(";", records);
  }

  private static String written(String from, Zone zone) {
    String ways = zone.ways().stream().map(way -> "," + way).collect(Collectors.joining());
    return from + "," + zone.meaning().code() + ways + (zone.limit().isEmpty() ? "" : "," + zone.limit());
  }
}
