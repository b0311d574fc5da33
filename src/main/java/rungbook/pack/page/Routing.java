package rungbook.pack.page;

import java.math.BigDecimal;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rungbook.tree.Readings;

/**
 * Which reading leads which way, as JSON for the pack's script.
 *
 * <p>A reading is counted in the last digits of the meter's display: a count is {@code step}·10^-{@code decimals} of
 * the unit. The meter shows counts from {@code low} to {@code high}. {@code spans} has {@code [way, from, to]} in
 * counts, both ends included; {@code other} takes a count in none of them. Ways are indexes from 0; a member without a
 * way is left out.
 */
final class Routing {

  private Routing() {}

  static String of(Readings readings) {
    BigDecimal digit = readings.digit().stripTrailingZeros();
    BigDecimal step = digit.scale() < 0 ? digit.setScale(0) : digit;
    String spans = readings.spans().stream().filter(span -> !span.isEmpty())
        .map(span -> "[" + span.way() + "," + span.from() + "," + span.to() + "]").collect(Collectors.joining(","));
    return "{" + member("step", step.unscaledValue()) + "," + member("decimals", step.scale()) + ","
        + member("low", readings.lowCount()) + "," + member("high", readings.highCount()) + ","
        + member("spans", "[" + spans + "]") + way("overload", readings.wayOfOverload())
        + way("none", readings.wayOfNoReading()) + way("other", readings.elseWay()) + "}";
  }

  private static String member(String name, Object value) {
    return "\"" + name + "\":" + value;
  }

  private static String way(String name, OptionalInt way) {
    return way.isPresent() ? "," + member(name, way.getAsInt()) : "";
  }
}
