package rungbook.proof.accounting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import rungbook.circuit.Reading;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.StrayVoltage;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/** What is read at one check with a meter, over all the states in which it is met. */
public final class CheckTally {

  private final int step;
  private final Step.MeterCheck check;
  private final Readings readings;
  private final Segments segments;
  private final List<LimitTally> limits = new ArrayList<>();
  private final BitSet taken = new BitSet();
  private final ReadingSplit split;
  private final MeterError.Rectangular error;
  private final Installations installations;
  private final double[] healthyWeights;
  private final ReadingHistogram.Accumulator histogram;
  private double healthyInside;
  private double healthyAll;
  private double healthyFirst;
  private double inconclusive;
  private double decided;
  private final Risks.Interval window;
  private final Risks.Tally meterRisks;
  private final List<Stray> strays = new ArrayList<>();
  private final CaseReadings byCase;

  /** The cases named by the findings that each way on can reach: in the tree itself, and there or in other trees. */
  public record NamedCases(List<BitSet> own, List<BitSet> any) {}

  /** An open conductor that shows a voltage which the low impedance pulls away. */
  public record Stray(Extreme seen, double lowImpedance) {}

  public CheckTally(int step, Step.MeterCheck check, Meter.Scale scale, Installations installations,
      NamedCases named) {
    this.step = step;
    this.check = check;
    this.installations = installations;
    readings = Readings.of(check, scale);
    segments = Segments.of(readings);
    error = MeterError.of(scale);
    split = new ReadingSplit(segments, error, check.ways().size(), installations.samples());
    healthyWeights = new double[installations.samples()];
    window = window(scale.digit().doubleValue());
    meterRisks = new Risks.Tally(window, window, error);
    byCase = new CaseReadings(installations.cases().size());
    histogram = new ReadingHistogram.Accumulator(histogramTop(scale.digit().doubleValue()));
    for (int segment = 1; segment < segments.size(); segment++) {
      limits.add(limit(segment, scale, named));
    }
  }

  /** What is shown inside the expected window; everything where the text names none. */
  private Risks.Interval window(double digit) {
    Optional<Readings.Stretch> stretch = check.expected().map(readings::stretch).filter(counts -> !counts.isEmpty());
    double low = stretch.filter(counts -> counts.from() > readings.lowCount())
        .map(counts -> (counts.from() - 0.5) * digit).orElse(Double.NEGATIVE_INFINITY);
    double high = stretch.filter(counts -> counts.to() < readings.highCount())
        .map(counts -> (counts.to() + 0.5) * digit).orElse(Double.POSITIVE_INFINITY);
    return new Risks.Interval(low, high);
  }

  /** Half as much again as the highest limit. */
  private double histogramTop(double digit) {
    double highest = segments.size() > 1 ? segments.edge(segments.size() - 1) : 0;
    highest = Math.max(highest, window.high() < Double.POSITIVE_INFINITY ? window.high() : 0);
    return Math.max(10 * digit, 1.5 * highest);
  }

  /** A fault has to go where this tree names it, unless it is named on the other side as well. */
  private LimitTally limit(int segment, Meter.Scale scale, NamedCases named) {
    BitSet mustBelow = below(segment, named.own());
    mustBelow.andNot(above(segment, named.any()));
    BitSet mustAbove = above(segment, named.own());
    mustAbove.andNot(below(segment, named.any()));
    double edge = segments.edge(segment);
    mustBelow.set(0, window.high() <= edge);
    mustAbove.set(0, window.low() >= edge);
    return new LimitTally(segments, segment, error, scale.digit().doubleValue(), mustBelow, mustAbove,
        installations.cases().size(), installations.drawn());
  }

  private BitSet below(int segment, List<BitSet> namedByWay) {
    return named(0, segment, namedByWay);
  }

  private BitSet above(int segment, List<BitSet> namedByWay) {
    BitSet above = named(segment, segments.size(), namedByWay);
    if (segments.overloadWay() != Segments.NONE) {
      above.or(namedByWay.get(segments.overloadWay()));
    }
    return above;
  }

  private BitSet named(int from, int to, List<BitSet> namedByWay) {
    BitSet named = new BitSet();
    for (int segment = from; segment < to; segment++) {
      if (segments.way(segment) != Segments.NONE) {
        named.or(namedByWay.get(segments.way(segment)));
      }
    }
    return named;
  }

  /**
   * What the healthy system reads in a state in which the check is met, whether or not a healthy system comes here.
   *
   * @param reaching the variants of which some installation comes here
   */
  public void addHealthy(double[] read, boolean[] reaching) {
    int inside = 0;
    for (int sample = 0; sample < read.length; sample++) {
      healthyWeights[sample] = reaching[installations.variant(sample)] ? 1 : 0;
    }
    healthyFirst = healthyAll == 0 ? read[0] : healthyFirst;
    for (int sample = 0; sample < installations.drawn(); sample++) {
      double value = ReadingSplit.shownAbout(read[sample]);
      boolean number = healthyWeights[sample] > 0 && (read[sample] >= 0 || read[sample] == Reading.FLOATING);
      inside += number && window.contains(value) ? 1 : 0;
      if (number) {
        histogram.add(value);
        byCase.add(0, value, 1);
      }
    }
    healthyAll += installations.drawn();
    healthyInside += inside;
    if (inside > 0) { // else the state is not the one that the author expects, and that is reported instead
      limits.forEach(limit -> limit.assignHealthy(read, healthyWeights));
      addToLimits(0, read, healthyWeights);
    }
  }

  /** What is read of a fault that comes here. */
  public void add(int caseNumber, double[] read, double[] weights) {
    double likelihood = installations.likelihood(caseNumber);
    for (int sample = 0; sample < installations.drawn(); sample++) {
      boolean number = read[sample] >= 0 || read[sample] == Reading.FLOATING;
      if (number && weights[sample] > 0) {
        double value = ReadingSplit.shownAbout(read[sample]);
        byCase.add(caseNumber, value, likelihood * weights[sample]);
        addDecision(value, likelihood * weights[sample]);
      }
    }
    addToLimits(caseNumber, read, weights);
  }

  private void addDecision(double value, double weight) {
    decided += weight;
    if (value < Double.POSITIVE_INFINITY) {
      meterRisks.add(value, weight);
      Verdict verdict = Verdict.of(value, window, 2 * error.standardUncertainty(value));
      inconclusive += verdict == Verdict.INCONCLUSIVE ? weight : 0;
    }
  }

  private void addToLimits(int caseNumber, double[] read, double[] weights) {
    for (LimitTally limit : limits) {
      if (limit.concerns(caseNumber)) {
        limit.add(caseNumber, read, weights);
      }
    }
  }

  /** Looks for readings that the low impedance pulls away to another way on. */
  public void compare(int caseNumber, double[] high, double[] low, double[] weights) {
    for (int sample = 0; sample < weights.length; sample++) {
      boolean pulledAway = weights[sample] > 0 && StrayVoltage.isStray(high[sample], low[sample]);
      if (pulledAway && !target(high[sample]).equals(target(low[sample]))) {
        strays.add(new Stray(new Extreme(caseNumber, sample, high[sample], 0), low[sample]));
        return;
      }
    }
  }

  private Optional<Object> target(double value) {
    int way = segments.way(segments.at(value));
    return way == Segments.NONE ? Optional.empty() : Optional.of(check.ways().get(way).target());
  }

  /** Whether the healthy system reads inside the expected window in none of the states. */
  public boolean healthyNeverInside() {
    return check.expected().isPresent() && healthyAll > 0 && healthyInside == 0;
  }

  /** What one healthy system reads. */
  public String healthyExample() {
    return ReportNumbers.reading(healthyFirst, readings.digit(), check.quantity());
  }

  /** What the meter's accuracy alone does at the expected window. */
  public Risks meterRisks() {
    return meterRisks.risks();
  }

  public double inconclusiveShare() {
    return decided == 0 ? 0 : inconclusive / decided;
  }

  public ReadingHistogram histogram() {
    return histogram.histogram();
  }

  /** What each case reads here. */
  public CaseReadings byCase() {
    return byCase;
  }

  /** Records that some installation takes a way; {@link Segments#NONE} is no way. */
  public void markTaken(int way) {
    if (way != Segments.NONE) {
      taken.set(way);
    }
  }

  public boolean isTaken(int way) {
    return taken.get(way);
  }

  /** The index of the check in its tree. */
  public int step() {
    return step;
  }

  public Step.MeterCheck check() {
    return check;
  }

  public Readings readings() {
    return readings;
  }

  public Segments segments() {
    return segments;
  }

  public ReadingSplit split() {
    return split;
  }

  public List<LimitTally> limits() {
    return limits;
  }

  /** The first reading of each case that shows a stray voltage, as the cases come. */
  public List<Stray> strays() {
    return strays;
  }
}
