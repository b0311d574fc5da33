package rungbook.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.Installations;
import rungbook.proof.propagation.RepairRuns;
import rungbook.proof.report.Proof;
import rungbook.tree.Tree;

/** Adds up what follows the findings that lead on, for each fault by itself. */
final class RepairSummary {

  private final Tree tree;
  private final Installations installations;
  private final List<String> names;

  /** @param names of the cases, as the system writes them */
  RepairSummary(Tree tree, Installations installations, List<String> names) {
    this.tree = tree;
    this.installations = installations;
    this.names = names;
  }

  List<Proof.Repair> of(List<RepairRuns> repairs) {
    List<Proof.Repair> all = new ArrayList<>();
    for (RepairRuns runs : repairs) {
      int[] repaired = IntStream.range(1, names.size()).filter(i -> installations.faults(i).size() == 1)
          .filter(i -> runs.right().repaired()[i] > Share.ROUNDING).toArray();
      if (repaired.length > 0) {
        all.add(new Proof.Repair(runs.finding(), tree.steps().get(runs.finding()).title(),
            mean(runs.right().proved(), runs.right().repaired(), repaired),
            1 - mean(runs.wrong().proved(), runs.wrong().repaired(), repaired),
            IntStream.of(repaired).mapToObj(i -> fault(i, runs)).toList(),
            List.copyOf(runs.right().unmodeled())));
      }
    }
    return all;
  }

  private Proof.RepairedFault fault(int caseNumber, RepairRuns runs) {
    int[] alone = {caseNumber};
    int elsewhere = runs.right().elsewhere()[caseNumber];
    return new Proof.RepairedFault(names.get(caseNumber), caseNumber, runs.right().repaired()[caseNumber],
        mean(runs.right().proved(), runs.right().repaired(), alone),
        1 - mean(runs.wrong().proved(), runs.wrong().repaired(), alone),
        elsewhere < 0 ? "" : tree.steps().get(elsewhere).title());
  }

  /** The share of what is repaired, over some cases, by likelihood. */
  private double mean(double[] proved, double[] repaired, int[] cases) {
    double part = 0;
    double whole = 0;
    for (int one : cases) {
      part += installations.likelihood(one) * proved[one];
      whole += installations.likelihood(one) * repaired[one];
    }
    return whole == 0 ? 0 : part / whole;
  }
}
