package rungbook.proof;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.proof.propagation.IntermittentRun;
import rungbook.proof.propagation.IntermittentWitness;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.IntermittentFaults;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Adds up where faults end that come and go. */
final class IntermittentSummary {

  /** Of the wrong parts, as many are shown with a way to them. */
  private static final int MOST_SHOWN = 3;

  private final Tree tree;
  private final ProofContext context;
  private final List<String> names;
  private final PropagationResult result;
  private final IntermittentRun run;
  private final EndTable ends;
  private final int[] cases;
  private final double allLikelihood;

  /** @param names of the cases, as the system writes them */
  IntermittentSummary(Tree tree, ProofContext context, List<String> names, PropagationResult result,
      IntermittentRun run) {
    this.tree = tree;
    this.context = context;
    this.names = names;
    this.result = result;
    this.run = run;
    this.ends = new EndTable(tree, context.findings(), run.ends());
    this.cases = IntStream.of(context.population().cases()).filter(i -> run.checks()[i] > Share.ROUNDING).toArray();
    this.allLikelihood = IntStream.of(cases).mapToDouble(context.installations()::likelihood).sum();
  }

  IntermittentFaults all() {
    List<IntermittentFaults.Fault> faults = IntStream.of(cases)
        .mapToObj(i -> new IntermittentFaults.Fault(names.get(i), context.installations().likelihood(i),
            ends.of(i).over(run.checks()[i])))
        .toList();
    EndShares mean = faults.stream().map(fault -> fault.ends().over(allLikelihood / fault.likelihood()))
        .reduce(EndShares.NONE, EndShares::plus);
    return new IntermittentFaults(mean, faults, wrongParts(), excluded());
  }

  /** One fault at one finding that does not name it. */
  private record Wrong(int finding, int caseNumber, int sample, double likelihood) {}

  private List<IntermittentFaults.WrongPart> wrongParts() {
    List<Wrong> wrong = new ArrayList<>();
    for (ArrivalTable.Arrivals arrivals : run.ends()) {
      if (arrivals.end() instanceof End.Finding end && tree.steps().get(end.step()) instanceof Step.Finding finding
          && !finding.faults().isEmpty()) {
        BitSet named = context.findings().named(finding);
        IntStream.of(cases).filter(i -> !named.get(i) && arrivals.witness()[i] >= 0)
            .forEach(i -> wrong.add(new Wrong(end.step(), i, arrivals.witness()[i], context.installations()
                .likelihood(i) * arrivals.shares()[i] / run.checks()[i] / allLikelihood)));
      }
    }
    var witness = new IntermittentWitness(tree, context, result.possibleAnswers());
    return wrong.stream().sorted(Comparator.comparingDouble((Wrong one) -> -one.likelihood())).limit(MOST_SHOWN)
        .flatMap(one -> shown(one, witness)).toList();
  }

  private Stream<IntermittentFaults.WrongPart> shown(Wrong wrong, IntermittentWitness witness) {
    return witness.to(wrong.finding(), wrong.caseNumber(), wrong.sample()).stream()
        .map(way -> new IntermittentFaults.WrongPart(names.get(wrong.caseNumber()),
            tree.steps().get(wrong.finding()).title(), wrong.likelihood(), way.goneFrom(), way.path()));
  }

  private List<IntermittentFaults.Excluded> excluded() {
    return run.excluded().keySet().stream().sorted().flatMap(finding -> excluded(finding).stream()).toList();
  }

  private Optional<IntermittentFaults.Excluded> excluded(int finding) {
    double[] excluded = run.excluded().getOrDefault(finding, new double[names.size()]);
    double[] arrived = result.ends().stream().filter(one -> one.end().equals(new End.Finding(finding))).findFirst()
        .map(ArrivalTable.Arrivals::shares).orElseGet(() -> new double[names.size()]);
    double part = 0;
    double whole = 0;
    for (int i : cases) {
      if (context.findings().named((Step.Finding) tree.steps().get(finding)).get(i)) {
        part += context.installations().likelihood(i) * excluded[i];
        whole += context.installations().likelihood(i) * arrived[i];
      }
    }
    return Optional.of(new IntermittentFaults.Excluded(finding, whole == 0 ? 0 : part / whole))
        .filter(one -> Share.isReported(one.share()));
  }
}
