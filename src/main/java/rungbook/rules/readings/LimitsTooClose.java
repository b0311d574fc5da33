package rungbook.rules.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rungbook.source.Code;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Answer;
import rungbook.tree.Range;
import rungbook.tree.Readings;

/**
 * Between two limits there is a reading that certainly belongs there. With the meter's largest error as the guard band
 * at each limit (JCGM 106, 8.3), the band left between them must not be empty. A single value leaves no band at all.
 */
public final class LimitsTooClose extends ReadingsRule {

  static final Code LIMITS_TOO_CLOSE = Code.of("limits-too-close");
  static final Code VALUE_TOO_EXACT = Code.of("value-too-exact");

  @Override
  public List<Code> codes() {
    return List.of(LIMITS_TOO_CLOSE, VALUE_TOO_EXACT);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    boolean[] unreachable = AnswerUnreachable.find(asked);
    NavigableMap<BigDecimal, Integer> limits = limits(asked, unreachable);
    BigDecimal lower = null;
    for (Map.Entry<BigDecimal, Integer> limit : limits.entrySet()) {
      if (lower != null && partsSomething(asked, lower, limit.getKey())) {
        compare(LIMITS_TOO_CLOSE, asked, lower, limit.getKey(),
            between(asked, lower, limit.getKey()).orElse(limit.getValue()), out);
      }
      lower = limit.getKey();
    }
    for (int way = 0; way < unreachable.length; way++) {
      Optional<BigDecimal> single = range(asked, way).filter(LimitsTooClose::isSingle).flatMap(Range::low);
      if (!unreachable[way] && single.isPresent() && limits.containsKey(single.get())) {
        compare(VALUE_TOO_EXACT, asked, single.get(), single.get(), way, out);
      }
    }
  }

  /**
   * Ends within one digit are the same limit unless an answer is between them; the ends of overlapping answers divide
   * nothing.
   */
  private static boolean partsSomething(Asked asked, BigDecimal low, BigDecimal high) {
    boolean apart = high.subtract(low).compareTo(asked.scale().digit()) >= 0 || between(asked, low, high).isPresent();
    long count = low.add(high).divide(asked.scale().digit().multiply(BigDecimal.valueOf(2)), 0, RoundingMode.HALF_UP)
        .longValue();
    int holding = 0;
    for (Readings.Taken span : asked.readings().spans()) {
      holding += span.holds(count) ? 1 : 0;
    }
    return apart && holding <= 1;
  }

  /**
   * The ends inside the meter's range, each with an answer that has it; an end of the meter's range itself divides
   * nothing.
   */
  private static NavigableMap<BigDecimal, Integer> limits(Asked asked, boolean[] unreachable) {
    var limits = new TreeMap<BigDecimal, Integer>();
    for (int way = 0; way < asked.check().ways().size(); way++) {
      Optional<Range> range = range(asked, way);
      if (range.isPresent() && !unreachable[way] && !asked.readings().stretch(range.get()).isEmpty()) {
        add(range.get().low(), way, asked, limits);
        add(range.get().high(), way, asked, limits);
      }
    }
    return limits;
  }

  private static void add(Optional<BigDecimal> end, int way, Asked asked, Map<BigDecimal, Integer> limits) {
    if (end.isPresent() && end.get().compareTo(asked.scale().low()) > 0
        && end.get().compareTo(asked.scale().high()) < 0) {
      limits.putIfAbsent(end.get(), way);
    }
  }

  private static void compare(Code code, Asked asked, BigDecimal low, BigDecimal high, int way, Problems out) {
    BigDecimal lowError = asked.scale().errorAt(low);
    BigDecimal highError = asked.scale().errorAt(high);
    BigDecimal least = lowError.add(highError);
    if (high.subtract(low).compareTo(least) < 0) {
      out.add(asked.atWay(code, way).with("low", amount(asked, low)).with("high", amount(asked, high))
          .with("apart", amount(asked, high.subtract(low)))
          .with("error", amount(asked, highError.setScale(asked.scale().digit().scale() + 1, RoundingMode.HALF_UP)))
          .with("least", amount(asked, roundedUp(least, asked)))
          .shownBy(asked.readings().shown(low.add(high).divide(BigDecimal.valueOf(2))).map(asked.readings()::show)
              .map(Witness.Reading::new).orElseThrow()));
    }
  }

  private static BigDecimal roundedUp(BigDecimal value, Asked asked) {
    BigDecimal digit = asked.scale().digit();
    return value.divide(digit, 0, RoundingMode.CEILING).multiply(digit);
  }

  private static String amount(Asked asked, BigDecimal value) {
    BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return plain.toPlainString() + " " + asked.check().quantity().unit();
  }

  private static Optional<Integer> between(Asked asked, BigDecimal low, BigDecimal high) {
    for (int way = 0; way < asked.check().ways().size(); way++) {
      Optional<Range> range = range(asked, way);
      if (range.isPresent() && isEnd(range.get().low(), low) && isEnd(range.get().high(), high)
          && !asked.readings().stretch(range.get()).isEmpty()) {
        return Optional.of(way);
      }
    }
    return Optional.empty();
  }

  private static boolean isEnd(Optional<BigDecimal> end, BigDecimal value) {
    return end.isPresent() && end.get().compareTo(value) == 0;
  }

  private static boolean isSingle(Range range) {
    return range.low().isPresent() && isEnd(range.high(), range.low().get());
  }

  private static Optional<Range> range(Asked asked, int way) {
    return asked.way(way).answer() instanceof Answer.Within within ? Optional.of(within.range()) : Optional.empty();
  }
}
