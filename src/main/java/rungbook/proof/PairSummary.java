package rungbook.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.propagation.RepairRuns;
import rungbook.proof.report.PairOutcome;
import rungbook.system.Vocabulary;

/** Adds up what becomes of the faults that come together. */
final class PairSummary {

  private final ProofContext context;
  private final Vocabulary words;
  private final EndTable ends;
  private final List<RepairRuns> repairs;

  PairSummary(ProofContext context, Vocabulary words, EndTable ends, List<RepairRuns> repairs) {
    this.context = context;
    this.words = words;
    this.ends = ends;
    this.repairs = repairs;
  }

  /** The likeliest first. */
  List<PairOutcome> all() {
    return IntStream.of(context.population().cases()).filter(i -> context.installations().faults(i).size() > 1)
        .mapToObj(this::outcome).sorted(Comparator.comparingDouble((PairOutcome one) -> -one.likelihood())).toList();
  }

  private PairOutcome outcome(int caseNumber) {
    double both = 0;
    double repaired = 0;
    double missed = 0;
    var missedAfter = new ArrayList<PairOutcome.Missed>();
    for (RepairRuns runs : repairs) {
      both += runs.right().proved()[caseNumber];
      repaired += runs.right().repaired()[caseNumber];
      double left = runs.right().left()[caseNumber];
      missed += left;
      if (left > Share.ROUNDING) {
        missedAfter.add(new PairOutcome.Missed(runs.finding(), caseNumber, left / runs.right().repaired()[caseNumber],
            runs.right().unmodeled().isEmpty()));
      }
    }
    List<String> faults = context.installations().faults(caseNumber).stream()
        .map(key -> words.faults().getOrDefault(key, key)).toList();
    return new PairOutcome(faults, context.installations().likelihood(caseNumber), ends.of(caseNumber), both,
        Math.max(0, repaired - both - missed), missed, missedAfter);
  }
}
