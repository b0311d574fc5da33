package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rungbook.circuit.Probe;
import rungbook.proof.accounting.ReadingSplit;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The ways of a check that a healthy system takes in one situation. Any other way is an abnormal answer.
 */
final class NormalWays {

  private final Tree tree;
  private final ProofContext context;
  private final ObservedStates observed;
  private final ReachableFaults reachable;
  private final Map<Integer, Map<Situation, boolean[]>> known = new HashMap<>();

  NormalWays(Tree tree, ProofContext context, ObservedStates observed, ReachableFaults reachable) {
    this.tree = tree;
    this.context = context;
    this.observed = observed;
    this.reachable = reachable;
  }

  boolean[] of(int step, Situation situation) {
    return known.computeIfAbsent(step, any -> new HashMap<>()).computeIfAbsent(situation, any -> find(step, any));
  }

  private boolean[] find(int step, Situation situation) {
    Step asked = tree.steps().get(step);
    double[][] byWay = asked instanceof Step.MeterCheck check ? measured(check, situation)
        : seen((Step.SenseCheck) asked, situation);
    boolean[] normal = new boolean[asked.ways().size()];
    for (int way = 0; way < normal.length; way++) {
      normal[way] = byWay.length == 0 ? reachable.openWays(asked, 0)[way] : Share.isReported(share(byWay[way]));
    }
    return normal;
  }

  /** By way; empty if the circuit does not model the check. */
  private double[][] measured(Step.MeterCheck check, Situation situation) {
    Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
    Optional<Probe> probe = context.probePlan().probe(check, situation.place());
    if (scale.isEmpty() || probe.isEmpty()) {
      return new double[0][];
    }
    ReadingSplit split = ReadingSplit.of(check, scale.get(), context.installations().samples());
    double[] read = new double[context.installations().samples()];
    observed.in(situation.state()).readings(0, probe.get(), read);
    split.divide(read, everyDrawn());
    double[][] byWay = new double[check.ways().size()][];
    Arrays.setAll(byWay, split::of);
    return byWay;
  }

  private double[][] seen(Step.SenseCheck check, Situation situation) {
    if (!context.probePlan().shows(check)) {
      return new double[0][];
    }
    SenseSplit split = new SenseSplit(context.installations(), check, reachable.openWays(check, 0));
    split.look(observed.in(situation.state()), 0);
    double[][] byWay = new double[check.ways().size() + 1][context.installations().samples()];
    split.divide(everyDrawn(), byWay);
    return byWay;
  }

  private double[] everyDrawn() {
    double[] weights = new double[context.installations().samples()];
    Arrays.fill(weights, 0, context.installations().drawn(), 1);
    return weights;
  }

  private double share(double[] weights) {
    return Arrays.stream(weights).limit(context.installations().drawn()).sum() / context.installations().drawn();
  }
}
