package rungbook.tree.reader;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Block;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.tree.Numbers;
import rungbook.tree.StepTimer;

/** Reads how long a step takes: its minutes, and the time that somebody keeps with a clock. */
final class StepTimes {

  static final Code MINUTES_BELOW_WAIT = Code.of("minutes-below-wait");
  static final Code MINUTES_UNREADABLE = Code.of("minutes-unreadable");
  static final Code TIME_UNREADABLE = Code.of("time-unreadable");

  private static final BigDecimal USUAL_MINUTES = BigDecimal.ONE;
  private static final Set<String> WITHOUT_WORK = Set.of("finding", "end", "take");
  private static final int MINUTE = 60;
  private static final int HOUR = 60 * MINUTE;

  /** Nobody stays at a unit for longer. */
  private static final BigDecimal MOST_SECONDS = BigDecimal.valueOf(24L * HOUR);

  private static final Map<String, Integer> SECONDS = Map.of("s", 1, "second", 1, "seconds", 1, "min", MINUTE, "minute",
      MINUTE, "minutes", MINUTE, "h", HOUR, "hour", HOUR, "hours", HOUR);

  private final Block block;
  private final Source source;
  private final Problems problems;

  StepTimes(Block block, Source source, Problems problems) {
    this.block = block;
    this.source = source;
    this.problems = problems;
  }

  /** The line that the kind of the block allows; an unknown key has its own problem. */
  Optional<StepTimer> timer() {
    return Arrays.stream(StepTimer.Kind.values())
        .filter(kind -> StepKeys.of(block.kind()).contains(kind.key()))
        .flatMap(kind -> block.entry(kind.key()).flatMap(line -> timer(kind, line)).stream()).findFirst();
  }

  private Optional<StepTimer> timer(StepTimer.Kind kind, Entry line) {
    Optional<Integer> seconds = Numbers.read(line.value()).flatMap(StepTimes::seconds);
    if (seconds.isEmpty() && !line.value().isEmpty()) {
      problems.add(Problem.at(TIME_UNREADABLE, source, line.valueSpan()).with("written", line.value())
          .with("key", line.key()));
    }
    return seconds.map(whole -> new StepTimer(kind, whole, line.value()));
  }

  private static Optional<Integer> seconds(Numbers.Measured measured) {
    return Optional.ofNullable(SECONDS.get(measured.unit().toLowerCase(Locale.ROOT)))
        .map(unit -> measured.number().multiply(BigDecimal.valueOf(unit)))
        .filter(seconds -> seconds.compareTo(BigDecimal.ONE) >= 0 && seconds.compareTo(MOST_SECONDS) <= 0)
        .map(seconds -> seconds.setScale(0, RoundingMode.UP).intValueExact());
  }

  /** What is written, or the usual; never less than what the step waits. */
  BigDecimal minutes(Optional<StepTimer> timer) {
    BigDecimal waiting = timer.map(time -> BigDecimal.valueOf(time.seconds()).divide(BigDecimal.valueOf(MINUTE), 2,
        RoundingMode.UP)).orElse(BigDecimal.ZERO);
    Optional<Entry> line = block.entry("minutes");
    Optional<BigDecimal> written = line.flatMap(this::written);
    if (written.isPresent() && written.get().compareTo(waiting) < 0) {
      problems.add(Problem.at(MINUTES_BELOW_WAIT, source, line.orElseThrow().valueSpan())
          .with("written", line.orElseThrow().value()).with("wait", timer.orElseThrow().written()));
    }
    return written.orElseGet(() -> usual().max(waiting));
  }

  private Optional<BigDecimal> written(Entry line) {
    Optional<BigDecimal> minutes = Numbers.read(line.value())
        .filter(measured -> measured.unit().isEmpty() && measured.number().signum() >= 0).map(Numbers.Measured::number);
    if (minutes.isEmpty()) {
      problems.add(Problem.at(MINUTES_UNREADABLE, source, line.valueSpan()).with("written", line.value()));
    }
    return minutes;
  }

  private BigDecimal usual() {
    return WITHOUT_WORK.contains(block.kind()) ? BigDecimal.ZERO : USUAL_MINUTES;
  }
}
