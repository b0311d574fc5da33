package rungbook.proof.report;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungbook.proof.accounting.ReadingHistogram;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Risks;
import rungbook.proof.accounting.Share;
import rungbook.proof.accounting.TestabilityMeasures;
import rungbook.proof.propagation.End;
import rungbook.source.Problem;
import rungbook.tree.Tree;

/**
 * What a tree does with every fault of its system that shows its complaint. Shares are from 0 to 1; everything is in
 * the order of the text or of the system.
 *
 * @param complaint which faults the tree is for; all else is about these
 * @param drawn how many installations were drawn at random; {@code corners} more are at the corners of the tolerances
 * @param claimed how the tree does with the faults that its findings name
 * @param whole how it does with every fault that shows the complaint
 * @param falseAlarmShare the share of healthy systems that end at a finding which names a fault
 * @param meanChecks over the faults it names, by likelihood
 * @param meanMinutes walking included
 * @param falseAlarms the findings which name a fault and at which some healthy system ends
 * @param variants how the tree does in the base and in each variant of the system that it is for; empty if the system
 * has no variants
 * @param repairs what follows each finding that leads on, where a fault that it names arrives and is repaired
 * @param pairs what becomes of the faults that come together
 * @param intermittent where faults end that come and go
 * @param unmodeled titles of the checks that the circuit does not model; each takes every answer alike
 * @param journeys where every case ends through all trees that take over, in the order of the outcomes
 */
public record Proof(
    Tree tree, Complaint complaint, List<Outcome> outcomes, List<Ending> endings, List<Check> checks,
    List<WayFlow> ways, int drawn, int corners, TestabilityMeasures claimed, TestabilityMeasures whole,
    double falseAlarmShare, double meanChecks, double meanMinutes, List<FalseAlarm> falseAlarms,
    List<InVariant> variants, List<Repair> repairs, List<PairOutcome> pairs, IntermittentFaults intermittent,
    List<String> unmodeled, List<Journey> journeys, List<Problem> problems) {

  public Proof with(List<Problem> found) {
    return new Proof(tree, complaint, outcomes, endings, checks, ways, drawn, corners, claimed, whole, falseAlarmShare,
        meanChecks, meanMinutes, falseAlarms, variants, repairs, pairs, intermittent, unmodeled, journeys, found);
  }

  /** Whether a case is two faults that come together. */
  public boolean isPair(String name) {
    return pairs.stream().anyMatch(pair -> pair.name().equals(name));
  }

  /**
   * Where one case ends, as shares of its installations that show the complaint.
   *
   * @param likelihood that the fault gives this complaint, against the other faults of the system
   * @param claimed whether some finding of the tree names it
   */
  public record Outcome(
      String name, double likelihood, boolean claimed, double found, double mistaken, double healthy, double referred,
      double handedOn, double nothing, double checks, double minutes) {}

  /**
   * How the tree does in one variant of the system.
   *
   * @param name empty for the base
   * @param share of all installations
   * @param drawn how many of the drawn installations are of it
   * @param faults how many faults give the complaint in it; {@code named} how many of them a finding names
   * @param detected of the likelihood of the latter, what is found
   * @param mistaken of the likelihood of the former, what ends at a finding that names only others
   * @param falseAlarmShare the share of its healthy systems that end at a finding which names a fault
   * @param changed the faults that end elsewhere than in the base
   */
  public record InVariant(String name, double share, int drawn, int faults, int named, double detected,
      double mistaken, double falseAlarmShare, List<ChangedFault> changed) {}

  /**
   * Where a fault ends in one variant, as shares of its installations there.
   *
   * @param claimed whether some finding of the tree names it
   * @param isWorse whether less of it is found than in the base, or more of it mistaken or called healthy
   */
  public record ChangedFault(String fault, boolean claimed, EndShares ends, boolean isWorse) {}

  /**
   * The cases that arrive at an end of the tree.
   *
   * @param likelihood the share of all likelihood that arrives
   * @param group the faults it leaves
   */
  public record Ending(End end, String title, List<String> named, List<Arrived> arrived, double likelihood,
      int group) {}

  /**
   * @param share of the healthy systems; 0 where only one at the corners of the tolerances ends here
   * @param sample the healthy system that does
   * @param circumstances its supply and house, in words
   */
  public record FalseAlarm(int finding, String title, double share, int sample, String circumstances) {

    /** {@code 3 %}; {@code the worst} where no share can be given. */
    public String shown() {
      return share == 0 ? "the worst" : ReportNumbers.percent(share);
    }
  }

  /**
   * What follows a finding that leads on. Shares are of what is repaired, over the faults by likelihood.
   *
   * @param finding its step
   * @param passed what ends "repaired and proved" after a right repair
   * @param noticed what does not after a repair that takes nothing away
   * @param unmodeled titles of the checks on the way that the circuit does not model
   */
  public record Repair(int finding, String title, double passed, double noticed, List<RepairedFault> faults,
      List<String> unmodeled) {}

  /**
   * One fault that is repaired after a finding.
   *
   * @param repaired the share of its installations
   * @param failsAt the title of the step where most right repairs end that do not pass; empty if all pass
   */
  public record RepairedFault(String fault, int caseNumber, double repaired, double passed, double noticed,
      String failsAt) {}

  /**
   * @param share of the fault's installations
   * @param named whether the finding names it
   */
  public record Arrived(String fault, double share, boolean named) {}

  /**
   * How much passes a way on.
   *
   * @param healthy the share of healthy systems
   * @param likelihood the share of all likelihood
   */
  public record WayFlow(int step, int way, double healthy, double likelihood) {}

  /**
   * A check with a meter.
   *
   * @param risks what the meter's accuracy alone does at the expected window
   * @param inconclusive the share of readings of which the meter cannot say whether they are in the window
   * @param bands which answer takes which readings, from low to high
   * @param reads what the healthy system and the faults read here, the healthy system first, then the likeliest
   */
  public record Check(int step, String title, List<Limit> limits, ReadingHistogram histogram, Risks risks,
      double inconclusive, List<Band> bands, List<Reads> reads) {}

  /**
   * Readings that one answer takes, up to where the next band begins.
   *
   * @param way the index of the answer; negative where none takes them
   */
  public record Band(double from, int way) {}

  /**
   * The readings of one case at a check, over the drawn installations. An overload is positive infinity.
   *
   * @param fault {@code healthy} for the healthy system
   */
  public record Reads(String fault, boolean healthy, double lowest, double highest) {}

  /**
   * A limit between two answers.
   *
   * @param at the number as the text writes it
   * @param above its lower bound, excluded, set by the readings that have to go below
   * @param upTo its upper bound, included, set by those that have to go above
   * @param better a round number that separates the two sides
   * @param misrouted the cases that go the wrong way
   */
  public record Limit(
      int step, int lowerWay, int upperWay, BigDecimal at, Optional<Bound> above, Optional<Bound> upTo,
      Optional<BigDecimal> better, boolean sound, boolean separable, List<Misrouted> misrouted) {

    /** As a report writes it: {@code 26 V}. */
    public String words(String unit) {
      return ReportNumbers.number(at) + " " + unit;
    }

    /** What it sends the wrong way, the worst first: the healthy system, then the faults by likelihood. */
    public List<Misrouted> reported() {
      return misrouted.stream().filter(one -> one.healthy() || Share.isReported(one.share()))
          .sorted(Comparator.comparing(Misrouted::healthy).thenComparingDouble(Misrouted::likelihood).reversed())
          .toList();
    }

    /** The healthy system first: even one at a corner of its tolerances must not raise a false alarm. */
    public Optional<Misrouted> worst() {
      return reported().stream().findFirst();
    }
  }

  /**
   * The worst reading on one side of a limit.
   *
   * @param shown the reading with the meter's error added
   * @param reading the reading itself, in the quantity's unit
   * @param circumstances which installation: its supply voltage and state
   */
  public record Bound(BigDecimal shown, String fault, double reading, String circumstances) {}

  /**
   * @param fault {@code healthy} for the healthy system
   * @param share of the installations that come here
   * @param below whether it should go below
   */
  public record Misrouted(String fault, boolean healthy, double share, double likelihood, boolean below, double reading,
      String circumstances, int caseNumber, int sample) {}
}
