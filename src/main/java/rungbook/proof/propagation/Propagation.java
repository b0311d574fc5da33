package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.Segments;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.StateEnumeration;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * Carries every case and sample through a tree at once, step after step; those that reach a step in the same situation
 * go on together.
 */
public final class Propagation {

  private final Tree tree;
  private final ProofContext context;
  private final Installations installations;
  private final ObservedStates observed;
  private final ReachableFaults reachable;
  private final Map<Integer, Map<Situation, SituationNode>> waiting = new HashMap<>();
  private final double[] read;
  private final double[] readLow;
  private final CaseFlow flow;
  private final ArrivalTable ends;
  private final Map<Integer, CheckTally> tallies = new LinkedHashMap<>();
  private final Map<Integer, String> unmodeled = new LinkedHashMap<>();
  private final Map<Integer, List<Situation>> situations = new HashMap<>();
  private final Map<Integer, Collection<SituationNode>> found = new TreeMap<>();
  private final Map<Target.ToTree, Arriving> handedOn = new LinkedHashMap<>();

  private Propagation(Tree tree, ProofContext context, ObservedStates observed, ReachableFaults reachable) {
    this.tree = tree;
    this.context = context;
    this.installations = context.installations();
    this.observed = observed;
    this.reachable = reachable;
    int cases = installations.cases().size();
    flow = new CaseFlow(tree.steps(), cases, installations.drawn());
    ends = new ArrivalTable(installations);
    read = new double[installations.samples()];
    readLow = new double[installations.samples()];
  }

  /**
   * @param states that the tree meets
   * @param order of the steps that can be reached, each after all that lead to it
   */
  public static PropagationResult run(Tree tree, ProofContext context, StateEnumeration states, int[] order) {
    Propagation propagation = of(tree, context, states, order);
    propagation.begin();
    propagation.passAll(order);
    return propagation.result(propagation.repairs(order));
  }

  /**
   * Carries on what another tree hands over, up to the findings.
   *
   * @param first the step at which it arrives
   */
  public static PropagationResult follow(Tree tree, ProofContext context, StateEnumeration states, int[] order,
      int first, Arriving arriving) {
    Propagation propagation = of(tree, context, states, order);
    arriving.forEach((situation, node) -> propagation.enter(first, situation, node));
    propagation.passAll(order);
    return propagation.result(List.of());
  }

  private static Propagation of(Tree tree, ProofContext context, StateEnumeration states, int[] order) {
    var reachable = new ReachableFaults(context.findings(), context.findings().of(tree.steps(), order));
    return new Propagation(tree, context, new ObservedStates(context.installations(), states), reachable);
  }

  private void passAll(int[] order) {
    for (int step : order) {
      Cancellation.check();
      Map<Situation, SituationNode> here = waiting.remove(step);
      if (here != null) {
        situations.put(step, List.copyOf(here.keySet()));
        pass(step, here.values());
      }
    }
  }

  private List<RepairRuns> repairs(int[] order) {
    return found.entrySet().stream()
        .map(one -> RepairPropagation.of(one.getKey(), one.getValue(), order, tree, context, observed)).toList();
  }

  private PropagationResult result(List<RepairRuns> repairs) {
    return new PropagationResult(flow, ends.all(), tallies, unmodeled, repairs, situations,
        new PossibleAnswers(tree, context, tallies, observed, reachable), handedOn);
  }

  private void begin() {
    SituationNode first = node(0, context.start().to(tree.steps().get(0)));
    for (int i : context.population().cases()) {
      double[] all = new double[installations.samples()];
      for (int sample = 0; sample < all.length; sample++) {
        all[sample] = installations.weight(i, sample);
      }
      first.add(i, all);
    }
  }

  /** Somebody walks here from where the other tree was left. */
  private void enter(int first, Situation left, SituationNode arriving) {
    SituationNode node = node(first, left.to(tree.steps().get(first)));
    double walk = context.walkTimes().minutes(left.place(), node.situation.place());
    for (int i = 0; i < arriving.weights.length; i++) {
      if (arriving.weights[i] != null) {
        flow.addMinutes(i, flow.share(arriving.weights[i]) * walk);
        node.add(i, arriving.weights[i].clone());
      }
    }
  }

  private void pass(int number, Collection<SituationNode> nodes) {
    Step step = tree.steps().get(number);
    nodes.forEach(node -> flow.arrive(node));
    if (step instanceof Step.Finding) {
      nodes.forEach(node -> end(new End.Finding(number), node));
      if (!step.ways().isEmpty()) {
        found.put(number, nodes);
      }
    } else if (step instanceof Step.End) {
      nodes.forEach(node -> end(new End.Ended(number), node));
    } else if (step instanceof Step.Task task) {
      nodes.forEach(node -> doTask(task, node));
    } else if (step instanceof Step.MeterCheck check) {
      measure(number, check, nodes);
    } else {
      nodes.forEach(node -> look((Step.SenseCheck) step, node));
    }
  }

  private void end(End end, SituationNode node) {
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        ends.arrive(end, i, node.weights[i]);
      }
    }
  }

  /** A task is taken to be done as it says: its first way on. */
  private void doTask(Step.Task task, SituationNode node) {
    int way = task.ways().isEmpty() ? Segments.NONE : 0;
    observed.expect(node.situation.after(task).state(), node.cases());
    context.memory().after(node.situation, task, node.cases())
        .forEach((after, cases) -> cases.stream().forEach(i -> send(node, after, way, i, taken(node, i))));
  }

  private static double[] taken(SituationNode node, int caseNumber) {
    return Objects.requireNonNull(node.weights[caseNumber]);
  }

  private void measure(int number, Step.MeterCheck check, Collection<SituationNode> nodes) {
    Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
    for (SituationNode node : nodes) {
      Optional<Probe> probe = context.probePlan().probe(check, node.situation.place());
      if (scale.isEmpty() || probe.isEmpty()) {
        unmodeled.put(number, check.title());
        takeEveryWay(node);
      } else {
        CheckTally tally = tallies.computeIfAbsent(number,
            step -> new CheckTally(step, check, scale.get(), installations, reachable.byWay(check)));
        measure(tally, node, probe.get());
      }
    }
  }

  private void measure(CheckTally tally, SituationNode node, Probe probe) {
    Cancellation.check();
    Installations.Observations observations = observed.in(node);
    observations.readings(0, probe, read);
    tally.addHealthy(read, node.variants(installations));
    Optional<Probe> low = context.probePlan().lowImpedance(probe);
    for (int i = 0; i < node.weights.length; i++) {
      double[] weights = node.weights[i];
      if (weights != null) {
        observations.readings(i, probe, read);
        tally.split().divide(read, weights);
        sendAll(node, i, tally);
        if (i > 0) {
          tally.add(i, read, weights);
          compare(tally, i, observations, low, weights);
        }
        node.weights[i] = null;
      }
    }
  }

  private void compare(CheckTally tally, int caseNumber, Installations.Observations observations, Optional<Probe> low,
      double[] weights) {
    if (low.isPresent()) {
      observations.readings(caseNumber, low.get(), readLow);
      tally.compare(caseNumber, read, readLow, weights);
    }
  }

  private void sendAll(SituationNode node, int caseNumber, CheckTally tally) {
    for (int way = Segments.NONE; way < tally.check().ways().size(); way++) {
      double[] share = tally.split().of(way);
      if (SituationNode.any(share)) {
        send(node, node.situation, way, caseNumber, share.clone());
        tally.markTaken(way);
      }
    }
  }

  private void look(Step.SenseCheck check, SituationNode node) {
    SenseSplit ofFaults = new SenseSplit(installations, check, reachable.openWays(check, 1));
    SenseSplit ofHealthy = new SenseSplit(installations, check, reachable.openWays(check, 0));
    if (!ofFaults.allModeled()) {
      unmodeled.put(node.step, check.title());
    }
    Optional<Installations.Observations> looked = context.probePlan().shows(check) ? Optional.of(observed.in(node))
        : Optional.empty();
    double[][] byWay = new double[check.ways().size() + 1][installations.samples()];
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        SenseSplit split = i == 0 ? ofHealthy : ofFaults;
        if (looked.isPresent()) {
          split.look(looked.get(), i);
        }
        split.divide(node.weights[i], byWay);
        for (int way = 0; way < byWay.length; way++) {
          if (SituationNode.any(byWay[way])) {
            send(node, node.situation, way == check.ways().size() ? Segments.NONE : way, i, byWay[way].clone());
          }
        }
        node.weights[i] = null;
      }
    }
  }

  private void takeEveryWay(SituationNode node) {
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        takeEveryWay(node, i, reachable.openWays(tree.steps().get(node.step), i));
      }
    }
  }

  private void takeEveryWay(SituationNode node, int caseNumber, boolean[] open) {
    int count = 0;
    for (boolean way : open) {
      count += way ? 1 : 0;
    }
    double part = 1.0 / Math.max(1, count);
    double[] share = Arrays.stream(node.weights[caseNumber]).map(weight -> weight * part).toArray();
    for (int way = count == 0 ? Segments.NONE : 0; way < open.length; way++) {
      if (way == Segments.NONE || open[way]) {
        send(node, node.situation, way, caseNumber, share.clone());
      }
    }
  }

  private void send(SituationNode from, Situation situation, int way, int caseNumber, double[] weights) {
    if (way == Segments.NONE) {
      ends.arrive(new End.Stuck(from.step), caseNumber, weights);
      return;
    }
    Way taken = tree.steps().get(from.step).ways().get(way);
    double share = flow.take(from.step, way, caseNumber, weights);
    if (taken.target() instanceof Target.ToStep to) {
      SituationNode next = node(to.step(), situation.to(tree.steps().get(to.step())));
      flow.addMinutes(caseNumber, share * context.walkTimes().minutes(situation.place(), next.situation.place()));
      next.add(caseNumber, weights);
    } else if (taken.target() instanceof Target.ToTree to) {
      ends.arrive(new End.HandedOn(to.tree()), caseNumber, weights);
      handedOn.computeIfAbsent(to, any -> new Arriving(installations.cases().size(), installations.drawn()))
          .add(situation, caseNumber, weights);
    } else {
      ends.arrive(new End.Stuck(from.step), caseNumber, weights);
    }
  }

  private SituationNode node(int step, Situation situation) {
    return waiting.computeIfAbsent(step, s -> new LinkedHashMap<>())
        .computeIfAbsent(situation, s -> new SituationNode(step, situation, installations.cases().size()));
  }
}
