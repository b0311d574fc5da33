package rungbook.pack.page;

import java.math.BigDecimal;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rungbook.tree.Readings;

/**
 * Which reading leads which way, as the pack's script reads it: {@code
 * [m,e,low,high,[[way,from,to],…],overload,none,else]}. A
 * count is m·10^-e of the unit; ways are counted from 0, -1 is none.
 */
final class Routing {

  private Routing() {}

  static String of(Readings readings) {
    BigDecimal digit = readings.digit().stripTrailingZeros();
    BigDecimal whole = digit.scale() < 0 ? digit.setScale(0) : digit;
    String spans = readings.spans().stream().filter(span -> !span.isEmpty())
        .map(span -> "[" + span.way() + "," + span.from() + "," + span.to() + "]").collect(Collectors.joining(","));
    return "[" + whole.unscaledValue() + "," + whole.scale() + "," + readings.lowCount() + "," + readings.highCount()
        + ",[" + spans + "],"
        + index(readings.wayOfOverload()) + "," + index(readings.wayOfNoReading()) + "," + index(readings.elseWay())
        + "]";
  }

  private static int index(OptionalInt way) {
    return way.orElse(-1);
  }
}
