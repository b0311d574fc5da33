package rungbook.proof.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.Extreme;
import rungbook.proof.accounting.LimitTally;
import rungbook.proof.accounting.Segments;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.Installations;
import rungbook.tree.Answer;
import rungbook.tree.Way;

/** Says of each limit of a check where it is, where it could be and which cases it sends the wrong way. */
public final class LimitAnalysis {

  /** Where only one side sets a bound, a limit is looked for no farther from it than this. */
  private static final double BESIDE = 1.25;

  /**
   * The upper end of an expected window stays this near to what a good unit reads: of 120 V, 130 V and not 150 V. Our
   * choice: ANSI C84.1 allows 127 V at a 120 V outlet (from memory), and a window says what a good unit reads.
   */
  private static final double ABOVE_WINDOW = 1.07;

  private final CheckTally tally;
  private final Installations installations;
  private final List<String> names;
  private final BigDecimal digit;

  public LimitAnalysis(CheckTally tally, Installations installations, List<String> names) {
    this.tally = tally;
    this.installations = installations;
    this.names = names;
    this.digit = tally.readings().digit();
  }

  public List<Proof.Limit> all() {
    return tally.limits().stream().filter(this::isChoice).map(this::limit).toList();
  }

  /** A limit between two answers that lead to the same place decides nothing. */
  private boolean isChoice(LimitTally limit) {
    int below = tally.segments().way(limit.segment() - 1);
    int above = tally.segments().way(limit.segment());
    return below != Segments.NONE && above != Segments.NONE && !way(below).target().equals(way(above).target());
  }

  private Way way(int way) {
    return tally.check().ways().get(way);
  }

  private Proof.Limit limit(LimitTally limit) {
    long first = tally.segments().from(limit.segment());
    boolean overLow = limit.highestBelow().isEmpty() || first > limit.highestBelow().get().shown();
    boolean underHigh = limit.lowestAbove().isEmpty() || first <= limit.lowestAbove().get().shown();
    return new Proof.Limit(tally.step(), tally.segments().way(limit.segment() - 1),
        tally.segments().way(limit.segment()), written(limit), limit.highestBelow().map(this::bound),
        limit.lowestAbove().filter(extreme -> extreme.shown() < Long.MAX_VALUE).map(this::bound), better(limit),
        overLow && underHigh, limit.separable(), misrouted(limit));
  }

  /** As the text writes it: an end of either answer. */
  private BigDecimal written(LimitTally limit) {
    BigDecimal from = digit.multiply(BigDecimal.valueOf(tally.segments().from(limit.segment())));
    Optional<BigDecimal> low = range(tally.segments().way(limit.segment())).flatMap(range -> range.low())
        .filter(end -> isNear(end, from));
    Optional<BigDecimal> high = range(tally.segments().way(limit.segment() - 1)).flatMap(range -> range.high())
        .filter(end -> isNear(end, from));
    return low.or(() -> high).orElse(from);
  }

  private boolean isNear(BigDecimal end, BigDecimal from) {
    return end.subtract(from).abs().compareTo(digit) <= 0;
  }

  private Optional<rungbook.tree.Range> range(int way) {
    return way(way).answer() instanceof Answer.Within within ? Optional.of(within.range()) : Optional.empty();
  }

  private Proof.Bound bound(Extreme extreme) {
    BigDecimal shown = extreme.shown() == Long.MAX_VALUE
        ? digit.multiply(BigDecimal.valueOf(tally.readings().highCount()))
        : digit.multiply(BigDecimal.valueOf(extreme.shown()));
    return new Proof.Bound(shown, names.get(extreme.caseNumber()), extreme.reading(),
        installations.circumstances(extreme.caseNumber(), extreme.sample()));
  }

  /** Empty where no limit separates the two sides. */
  private Optional<BigDecimal> better(LimitTally limit) {
    if (limit.highestBelow().filter(extreme -> extreme.shown() == Long.MAX_VALUE).isPresent()) {
      return Optional.empty(); // nothing is shown above an overload
    }
    double one = digit.doubleValue();
    OptionalDouble below = limit.highestBelow().stream().mapToDouble(extreme -> extreme.shown() * one).findFirst();
    OptionalDouble above = limit.lowestAbove().stream().filter(extreme -> extreme.shown() < Long.MAX_VALUE)
        .mapToDouble(extreme -> extreme.shown() * one).findFirst();
    double low = below.orElse(above.orElse(0) / BESIDE);
    double high = above.orElse(Math.max(below.orElse(one) * BESIDE, low + one));
    if (below.isPresent() && endsWindow(limit)) {
      high = Math.min(high, Math.max(low * ABOVE_WINDOW, low + one));
    }
    if (low < high) {
      return between(low, high);
    }
    return limit.separable() ? between(limit.mostBelow(), limit.leastAbove()) : Optional.empty();
  }

  /** Whether the limit is the upper end of an expected window that has a lower end too. */
  private boolean endsWindow(LimitTally limit) {
    BigDecimal from = digit.multiply(BigDecimal.valueOf(tally.segments().from(limit.segment())));
    return tally.check().expected().filter(window -> window.low().filter(end -> end.signum() > 0).isPresent())
        .flatMap(window -> window.high()).filter(end -> isNear(end, from)).isPresent();
  }

  /** A limit is more than zero and no more than the display can show. */
  private Optional<BigDecimal> between(double low, double high) {
    double most = digit.doubleValue() * tally.readings().highCount();
    return high > 0 ? RoundNumber.within(Math.max(0, low), Math.min(high, most), digit) : Optional.empty();
  }

  private List<Proof.Misrouted> misrouted(LimitTally limit) {
    List<Proof.Misrouted> all = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (limit.witness(i) >= 0) {
        double share = limit.misroutedShare(i);
        double likelihood = installations.likelihood(i) * limit.misrouted(i) / installations.drawn();
        all.add(new Proof.Misrouted(names.get(i), i == 0, share < Share.ROUNDING ? 0 : share, likelihood,
            limit.mustBelow(i), limit.witnessReading(i),
            installations.circumstances(i, limit.witness(i)), i, limit.witness(i)));
      }
    }
    return all;
  }
}
