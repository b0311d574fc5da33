package rungbook.proof.propagation;

import java.util.Optional;
import rungbook.circuit.Probe;
import rungbook.proof.accounting.ReadingSplit;
import rungbook.proof.accounting.Segments;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Divides the samples of one case after another among the ways of one check in one situation. */
final class CheckWays {

  private final Step.Check check;
  private final Optional<Probe> probe;
  private final Optional<ReadingSplit> split;
  private final Optional<SenseSplit> senses;
  private final boolean[] open;
  private final double[] read;
  private final double[][] byWay;

  CheckWays(Step.Check check, Situation situation, Tree tree, ProofContext context, ReachableFaults reachable) {
    Installations installations = context.installations();
    this.check = check;
    Optional<Meter.Scale> scale = check instanceof Step.MeterCheck meter ? tree.meter().scale(meter.quantity())
        : Optional.empty();
    probe = check instanceof Step.MeterCheck meter && scale.isPresent()
        ? context.probePlan().probe(meter, situation.place()) : Optional.empty();
    split = probe.map(any -> ReadingSplit.of((Step.MeterCheck) check, scale.orElseThrow(), installations.samples()));
    open = reachable.openWays(check, 1);
    senses = check instanceof Step.SenseCheck sense && context.probePlan().shows(sense)
        ? Optional.of(new SenseSplit(installations, sense, open)) : Optional.empty();
    read = new double[installations.samples()];
    byWay = new double[check.ways().size() + 1][installations.samples()];
  }

  /** Whether the circuit says everything that the check asks. */
  boolean areModeled() {
    return split.isPresent() || senses.filter(SenseSplit::allModeled).isPresent();
  }

  /** What goes each way; what no way takes comes last. The next call writes over it. */
  double[][] divide(Installations.Observations observations, int caseNumber, double[] weights) {
    if (split.isPresent()) {
      observations.readings(caseNumber, probe.orElseThrow(), read);
      split.get().divide(read, weights);
      for (int way = 0; way < check.ways().size(); way++) {
        byWay[way] = split.get().of(way);
      }
      byWay[check.ways().size()] = split.get().of(Segments.NONE);
    } else if (senses.isPresent()) {
      senses.get().look(observations, caseNumber);
      senses.get().divide(weights, byWay);
    } else {
      divideAlike(weights);
    }
    return byWay;
  }

  private void divideAlike(double[] weights) {
    int count = 0;
    for (boolean one : open) {
      count += one ? 1 : 0;
    }
    for (int sample = 0; sample < weights.length; sample++) {
      for (int way = 0; way < open.length; way++) {
        byWay[way][sample] = open[way] ? weights[sample] / count : 0;
      }
      byWay[open.length][sample] = count == 0 ? weights[sample] : 0;
    }
  }
}
