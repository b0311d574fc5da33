package rungbook.proof.propagation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.ReadingSplit;
import rungbook.proof.accounting.Segments;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.RepairState;
import rungbook.proof.plan.Situation;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Carries the faults that a finding names from there through the repair to the ends. */
final class RepairPropagation {

  private final Tree tree;
  private final ProofContext context;
  private final Installations installations;
  private final ObservedStates observed;
  private final CaseRemedies remedies;
  private final boolean takesAway;
  private final Map<Integer, Map<Reached, SituationNode>> waiting = new HashMap<>();
  private final CaseFlow flow;
  private final double[] repaired;
  private final double[] proved;
  private final double[] left;
  private final double[] most;
  private final int[] elsewhere;
  private final Set<String> unmodeled = new TreeSet<>();

  /** The situation in which a step is done, and what was done since the finding. */
  private record Reached(Situation situation, RepairState repair) {}

  private RepairPropagation(Tree tree, ProofContext context, ObservedStates observed, boolean takesAway) {
    this.tree = tree;
    this.context = context;
    this.installations = context.installations();
    this.observed = observed;
    this.takesAway = takesAway;
    this.remedies = new CaseRemedies(tree.remedies(), installations);
    int cases = installations.cases().size();
    flow = new CaseFlow(tree.steps(), cases, installations.drawn());
    repaired = new double[cases];
    proved = new double[cases];
    left = new double[cases];
    most = new double[cases];
    elsewhere = new int[cases];
    Arrays.fill(elsewhere, -1);
  }

  /**
   * @param finding a step that leads on
   * @param arrived there, in every situation
   * @param order of the steps, each after all that lead to it
   */
  static RepairRuns of(int finding, Collection<SituationNode> arrived, int[] order, Tree tree, ProofContext context,
      ObservedStates observed) {
    RepairPropagation right = new RepairPropagation(tree, context, observed, true);
    RepairPropagation wrong = new RepairPropagation(tree, context, observed, false);
    return new RepairRuns(finding, right.run(finding, arrived, order), wrong.run(finding, arrived, order), right.flow);
  }

  private RepairArrivals run(int finding, Collection<SituationNode> arrived, int[] order) {
    BitSet named = context.findings().named((Step.Finding) tree.steps().get(finding));
    for (SituationNode node : arrived) {
      SituationNode start = node(finding, new Reached(node.situation, RepairState.NOTHING_DONE));
      named.stream().filter(one -> node.weights[one] != null && remedies.areKnown(one))
          .forEach(one -> start.add(one, node.weights[one].clone()));
    }
    for (int step : order) {
      Cancellation.check();
      Optional.ofNullable(waiting.remove(step)).ifPresent(nodes -> nodes.forEach((reached, node) -> {
        flow.arrive(node);
        pass(step == finding, reached, node);
      }));
    }
    return new RepairArrivals(repaired, proved, left, elsewhere, unmodeled);
  }

  /** @param begins whether this is the finding where the repair begins; another one ends it */
  private void pass(boolean begins, Reached reached, SituationNode node) {
    Step step = tree.steps().get(node.step);
    if (step instanceof Step.End || (step instanceof Step.Finding && !begins)) {
      end(node.step, reached, node);
    } else if (step instanceof Step.MeterCheck check) {
      measure(check, reached, node);
    } else if (step instanceof Step.SenseCheck check) {
      look(check, reached, node);
    } else {
      RepairState repair = reached.repair().after(step);
      BitSet staying = node.cases();
      node.cases().stream().filter(one -> reads(one, repair) != one).forEach(staying::clear);
      context.memory().after(reached.situation(), step, staying);
      forEach(node, (one, weights) -> send(node, new Reached(after(one, reached, step), repair),
          step.ways().isEmpty() ? Segments.NONE : 0, one, weights));
    }
  }

  private Situation after(int caseNumber, Reached reached, Step step) {
    List<RepairState> done = new ArrayList<>(List.of(reached.repair()));
    step.actions().forEach(action -> done.add(done.get(done.size() - 1).after(action)));
    return context.memory().repaired(reached.situation(), step, caseNumber,
        actions -> reads(caseNumber, done.get(actions)));
  }

  /** The case as which a case reads. */
  private int reads(int caseNumber, RepairState repair) {
    return takesAway ? installations.remaining(caseNumber, remedies.gone(caseNumber, repair)) : caseNumber;
  }

  private void measure(Step.MeterCheck check, Reached reached, SituationNode node) {
    Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
    Optional<Probe> probe = context.probePlan().probe(check, reached.situation().place());
    if (scale.isEmpty() || probe.isEmpty()) {
      takeEveryWay(check, reached, node);
      return;
    }
    ReadingSplit split = ReadingSplit.of(check, scale.get(), installations.samples());
    double[] read = new double[installations.samples()];
    Installations.Observations observations = observations(node, reached);
    forEach(node, (one, weights) -> {
      observations.readings(reads(one, reached.repair()), probe.get(), read);
      split.divide(read, weights);
      for (int way = Segments.NONE; way < check.ways().size(); way++) {
        send(node, reached, way, one, split.of(way).clone());
      }
    });
  }

  private void look(Step.SenseCheck check, Reached reached, SituationNode node) {
    boolean[] open = new boolean[check.ways().size()];
    Arrays.fill(open, true);
    SenseSplit split = new SenseSplit(installations, check, open);
    if (!split.allModeled()) {
      unmodeled.add(check.title());
    }
    double[][] byWay = new double[check.ways().size() + 1][installations.samples()];
    Optional<Installations.Observations> observations = context.probePlan().shows(check)
        ? Optional.of(observations(node, reached)) : Optional.empty();
    forEach(node, (one, weights) -> {
      observations.ifPresent(here -> split.look(here, reads(one, reached.repair())));
      split.divide(weights, byWay);
      for (int way = 0; way < byWay.length; way++) {
        send(node, reached, way == check.ways().size() ? Segments.NONE : way, one, byWay[way].clone());
      }
    });
  }

  private void takeEveryWay(Step step, Reached reached, SituationNode node) {
    unmodeled.add(step.title());
    int ways = step.ways().size();
    forEach(node, (one, weights) -> {
      double[] share = Arrays.stream(weights).map(weight -> weight / Math.max(1, ways)).toArray();
      for (int way = ways == 0 ? Segments.NONE : 0; way < ways; way++) {
        send(node, reached, way, one, share.clone());
      }
    });
  }

  /** What is observed of the cases that arrive, asked for together. */
  private Installations.Observations observations(SituationNode node, Reached reached) {
    var asked = new BitSet();
    node.cases().stream().forEach(one -> asked.set(reads(one, reached.repair())));
    Installations.Observations observations = observed.in(reached.situation().state());
    observations.expect(asked);
    return observations;
  }

  private void send(SituationNode from, Reached reached, int way, int caseNumber, double[] weights) {
    if (Arrays.stream(weights).noneMatch(weight -> weight > 0)) {
      return;
    }
    if (way == Segments.NONE) {
      end(from.step, reached, caseNumber, weights);
      return;
    }
    Way taken = tree.steps().get(from.step).ways().get(way);
    flow.take(from.step, way, caseNumber, weights);
    if (taken.target() instanceof Target.ToStep to) {
      Step next = tree.steps().get(to.step());
      node(to.step(), new Reached(reached.situation().to(next), reached.repair())).add(caseNumber, weights);
    } else {
      end(from.step, reached, caseNumber, weights);
    }
  }

  private void end(int step, Reached reached, SituationNode node) {
    forEach(node, (one, weights) -> end(step, reached, one, weights));
  }

  private void end(int step, Reached reached, int caseNumber, double[] weights) {
    if (!remedies.isRepair(caseNumber, reached.repair())) {
      return;
    }
    double share = flow.share(weights);
    boolean isProved = tree.steps().get(step) instanceof Step.End end
        && end.result() == Step.Result.REPAIRED_AND_PROVED;
    boolean isLeft = takesAway
        && remedies.gone(caseNumber, reached.repair()).size() < installations.faults(caseNumber).size();
    boolean counts = isProved && !isLeft;
    repaired[caseNumber] += share;
    proved[caseNumber] += counts ? share : 0;
    left[caseNumber] += isProved && isLeft ? share : 0;
    if (!counts && share > most[caseNumber]) {
      most[caseNumber] = share;
      elsewhere[caseNumber] = step;
    }
  }

  private SituationNode node(int step, Reached reached) {
    return waiting.computeIfAbsent(step, any -> new LinkedHashMap<>()).computeIfAbsent(reached,
        any -> new SituationNode(step, reached.situation(), installations.cases().size()));
  }

  private interface Weighed {
    void take(int caseNumber, double[] weights);
  }

  private static void forEach(SituationNode node, Weighed taker) {
    for (int i = 0; i < node.weights.length; i++) {
      double[] weights = node.weights[i];
      if (weights != null) {
        taker.take(i, weights);
        node.weights[i] = null;
      }
    }
  }
}
