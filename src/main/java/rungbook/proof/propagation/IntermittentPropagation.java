package rungbook.proof.propagation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * Carries each single fault through a tree once more, on the drawn samples. At every check, a copy of what arrives goes
 * on as if the fault were gone from there on. Of what goes on with the fault, it is known which faults have given the
 * same abnormal answers, the suspects: a finding that does not name all of them is reached by exclusion.
 */
public final class IntermittentPropagation {

  /** Ways that cross can divide what arrives again and again; beyond this, nothing is said about exclusion. */
  private static final int MOST_NODES = 20_000;

  private final Tree tree;
  private final ProofContext context;
  private final Installations installations;
  private final ObservedStates observed;
  private final ReachableFaults reachable;
  private final NormalWays normal;
  private final GoneFaults gone;
  private final ArrivalTable ends;
  private final double[] checks;
  private final Map<Integer, double[]> excluded = new TreeMap<>();
  private final Map<Integer, Map<Trace, SituationNode>> waiting = new HashMap<>();
  private int nodes;

  /**
   * @param suspects the cases that have given every abnormal answer so far; all as long as there was none, and none
   * once the circuit cannot say
   * @param isGone whether the fault is gone
   */
  private record Trace(Situation situation, BitSet suspects, boolean isGone) {

    Trace to(Step next) {
      return new Trace(situation.to(next), suspects, isGone);
    }
  }

  private IntermittentPropagation(Tree tree, ProofContext context, ObservedStates observed,
      ReachableFaults reachable) {
    this.tree = tree;
    this.context = context;
    this.installations = context.installations();
    this.observed = observed;
    this.reachable = reachable;
    this.normal = new NormalWays(tree, context, observed, reachable);
    this.gone = new GoneFaults(installations, observed);
    this.ends = new ArrivalTable(installations);
    this.checks = new double[installations.cases().size()];
  }

  /** @param answers of the tree, followed with faults that stay */
  public static IntermittentRun of(Tree tree, ProofContext context, PossibleAnswers answers, int[] order) {
    var run = new IntermittentPropagation(tree, context, answers.observed(), answers.reachable());
    run.begin();
    for (int step : order) {
      Cancellation.check();
      if (run.waiting.containsKey(step)) {
        // what begins to be gone at this step joins what was gone before
        run.pass(step, false);
        run.pass(step, true);
        run.waiting.remove(step);
      }
    }
    return new IntermittentRun(run.ends.all(), run.checks, run.excluded);
  }

  private void begin() {
    var everything = new BitSet();
    everything.set(0, checks.length);
    SituationNode first = node(0, new Trace(context.start().to(tree.steps().get(0)), everything, false));
    for (int i : context.population().cases()) {
      if (installations.faults(i).size() == 1) {
        double[] weights = new double[installations.samples()];
        for (int sample = 0; sample < installations.drawn(); sample++) {
          weights[sample] = installations.weight(i, sample);
        }
        first.add(i, weights);
      }
    }
  }

  private void pass(int number, boolean isGone) {
    Step step = tree.steps().get(number);
    for (var one : new ArrayList<>(waiting.getOrDefault(number, Map.of()).entrySet())) {
      if (one.getKey().isGone() == isGone) {
        pass(step, one.getKey(), one.getValue());
      }
    }
  }

  private void pass(Step step, Trace trace, SituationNode node) {
    if (step instanceof Step.Check check) {
      if (!trace.isGone()) {
        begin(node);
      }
      check(check, trace, node);
    } else if (step instanceof Step.Finding finding) {
      end(new End.Finding(node.step), trace, node);
      exclude(finding, trace, node);
    } else if (step instanceof Step.End) {
      end(new End.Ended(node.step), trace, node);
    } else {
      after(step, trace, node.cases()).forEach((after, cases) -> cases.stream()
          .forEach(i -> send(node.step, after, 0, i, Objects.requireNonNull(node.weights[i]))));
    }
  }

  private Map<Trace, BitSet> after(Step step, Trace trace, BitSet cases) {
    Map<Trace, BitSet> after = new LinkedHashMap<>();
    if (!trace.isGone()) {
      context.memory().after(trace.situation(), step, cases)
          .forEach((situation, some) -> after.put(new Trace(situation, trace.suspects(), false), some));
      return after;
    }
    cases.stream().forEach(i -> {
      var reads = new BitSet();
      IntStream.of(gone.as(i, trace.situation().after(step).state())).forEach(reads::set);
      Situation situation = context.memory().together(trace.situation(), step, reads);
      after.computeIfAbsent(new Trace(situation, trace.suspects(), true), any -> new BitSet()).set(i);
    });
    return after;
  }

  /** From this check on, the fault is gone. */
  private void begin(SituationNode node) {
    SituationNode from = node(node.step, new Trace(node.situation, new BitSet(), true));
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        from.add(i, node.weights[i].clone());
        checks[i] += share(node.weights[i]);
      }
    }
  }

  private void check(Step.Check check, Trace trace, SituationNode node) {
    var ways = new CheckWays(check, trace.situation(), tree, context, reachable);
    var byCase = new LinkedHashMap<Integer, double[][]>();
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        double[][] divided = ways.divide(trace.isGone() ? gone.observations(i, trace.situation().state())
            : observed.in(trace.situation().state()), i, node.weights[i]);
        byCase.put(i, copies(divided));
      }
    }
    for (int way = 0; way <= check.ways().size(); way++) {
      Trace after = trace.isGone() || way == check.ways().size() ? trace
          : new Trace(trace.situation(), suspects(node.step, way, trace, byCase, ways.areModeled()), false);
      for (var one : byCase.entrySet()) {
        send(node.step, after, way, one.getKey(), one.getValue()[way]);
      }
    }
  }

  private static double[][] copies(double[][] byWay) {
    double[][] copies = new double[byWay.length][];
    for (int way = 0; way < copies.length; way++) {
      copies[way] = byWay[way].clone();
    }
    return copies;
  }

  private BitSet suspects(int step, int way, Trace trace, Map<Integer, double[][]> byCase, boolean isModeled) {
    if (normal.of(step, trace.situation())[way]) {
      return trace.suspects();
    }
    var suspects = new BitSet();
    if (isModeled && nodes < MOST_NODES) {
      byCase.forEach((one, byWay) -> suspects.set(one, Share.isReported(share(byWay[way]))));
      suspects.and(trace.suspects());
    }
    return suspects;
  }

  /** A suspect that comes here too has not been set aside. */
  private void exclude(Step.Finding finding, Trace trace, SituationNode node) {
    BitSet named = context.findings().named(finding);
    var others = (BitSet) trace.suspects().clone();
    others.andNot(named);
    for (int i = others.nextSetBit(0); i >= 0; i = others.nextSetBit(i + 1)) {
      if (node.weights[i] != null) {
        others.clear(i);
      }
    }
    if (trace.isGone() || others.isEmpty()) {
      return;
    }
    double[] here = excluded.computeIfAbsent(node.step, any -> new double[checks.length]);
    named.stream().filter(i -> node.weights[i] != null).forEach(i -> here[i] += share(node.weights[i]));
  }

  /** Only what is gone ends: the rest has its ends already. */
  private void end(End end, Trace trace, SituationNode node) {
    for (int i = 0; trace.isGone() && i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        ends.arrive(end, i, node.weights[i]);
      }
    }
  }

  /** @param way the number of ways where none takes it */
  private void send(int step, Trace trace, int way, int caseNumber, double[] weights) {
    if (!SituationNode.any(weights)) {
      return;
    }
    List<Way> ways = tree.steps().get(step).ways();
    if (way < ways.size() && ways.get(way).target() instanceof Target.ToStep to) {
      node(to.step(), trace.to(tree.steps().get(to.step()))).add(caseNumber, weights);
    } else if (trace.isGone()) {
      ends.arrive(way < ways.size() && ways.get(way).target() instanceof Target.ToTree to
          ? new End.HandedOn(to.tree()) : new End.Stuck(step), caseNumber, weights);
    }
  }

  private SituationNode node(int step, Trace trace) {
    return waiting.computeIfAbsent(step, any -> new LinkedHashMap<>()).computeIfAbsent(trace, any -> {
      nodes++;
      return new SituationNode(step, trace.situation(), checks.length);
    });
  }

  private double share(double[] weights) {
    double sum = 0;
    for (int sample = 0; sample < installations.drawn(); sample++) {
      sum += weights[sample];
    }
    return sum / installations.drawn();
  }
}
