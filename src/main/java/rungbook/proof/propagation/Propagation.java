package rungbook.proof.propagation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.Segments;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.ReachableFindings;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.StateEnumeration;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Walks every case and sample through a tree at once, step after step; who stands alike at a step goes on together. */
public final class Propagation {

  private final Tree tree;
  private final ProofContext course;
  private final Installations installations;
  private final StateEnumeration plan;
  private final Map<Integer, Map<Situation, SituationNode>> waiting = new HashMap<>();
  private final Map<CircuitState, Installations.Moment> moments = new HashMap<>();
  private final ReachableFindings.Named behind;
  private final double[] read;
  private final double[] readLow;
  public final CaseFlow flow;
  public final ArrivalTable ends;
  public final IdentityHashMap<Step, CheckTally> tallies = new IdentityHashMap<>();
  public final List<CheckTally> checks = new ArrayList<>();
  public final Map<Integer, String> unmodelled = new LinkedHashMap<>();
  public final Map<Integer, List<Situation>> stands = new HashMap<>();

  public Propagation(Tree tree, ProofContext course, StateEnumeration plan, ReachableFindings.Named behind) {
    this.tree = tree;
    this.course = course;
    this.installations = course.installations();
    this.plan = plan;
    this.behind = behind;
    int cases = installations.cases().size();
    flow = new CaseFlow(tree.steps(), cases, installations.drawn());
    ends = new ArrivalTable(cases, installations.drawn());
    read = new double[installations.samples()];
    readLow = new double[installations.samples()];
  }

  public void walk(int[] order) {
    SituationNode first = node(0, course.start().to(tree.steps().get(0)));
    for (int i = 0; i < first.weights.length; i++) {
      double[] everyone = new double[installations.samples()];
      Arrays.fill(everyone, 1);
      first.add(i, everyone);
    }
    for (int step : order) {
      Cancellation.check();
      Map<Situation, SituationNode> here = waiting.remove(step);
      if (here != null) {
        stands.put(step, List.copyOf(here.keySet()));
        pass(step, here.values());
      }
    }
  }

  private void pass(int number, Collection<SituationNode> nodes) {
    Step step = tree.steps().get(number);
    nodes.forEach(node -> flow.arrive(node));
    if (step instanceof Step.Finding) {
      nodes.forEach(node -> end(new End.Finding(number), node));
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
    Situation after = node.stand.after(task);
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        send(node, after, task.ways().isEmpty() ? Segments.NONE : 0, i, node.weights[i]);
      }
    }
  }

  private void measure(int number, Step.MeterCheck check, Collection<SituationNode> nodes) {
    Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
    CheckTally tally = null;
    for (SituationNode node : nodes) {
      Optional<Probe> probe = course.question().probe(check, node.stand.place());
      if (scale.isEmpty() || probe.isEmpty()) {
        unmodelled.put(number, check.title());
        takeEveryWay(node);
      } else {
        tally = tally == null ? new CheckTally(number, check, scale.get(), installations, names(check)) : tally;
        measure(tally, node, probe.get());
      }
    }
    if (tally != null) {
      checks.add(tally);
      tallies.put(check, tally);
    }
  }

  private CheckTally.Names names(Step step) {
    return new CheckTally.Names(step.ways().stream().map(way -> course.behind().own(way, behind)).toList(),
        step.ways().stream().map(way -> course.behind().any(way, behind)).toList());
  }

  /**
   * The ways that a fault of this system may take at a check of which the circuit knows nothing. Where nothing but a
   * referral
   * lies behind an answer, something else must be wrong: no fault of the circuit smells of gas.
   */
  boolean[] open(Step step) {
    boolean[] open = new boolean[step.ways().size()];
    boolean any = false;
    for (int way = 0; way < open.length; way++) {
      open[way] = !course.behind().any(step.ways().get(way), behind).isEmpty();
      any |= open[way];
    }
    if (!any) {
      Arrays.fill(open, true);
    }
    return open;
  }

  private void measure(CheckTally tally, SituationNode node, Probe probe) {
    Cancellation.check();
    Installations.Moment moment = moment(node.stand.state());
    moment.readings(0, probe, read);
    tally.takeHealthy(read);
    Optional<Probe> low = course.question().lowImpedance(probe);
    for (int i = 0; i < node.weights.length; i++) {
      double[] weights = node.weights[i];
      if (weights != null) {
        moment.readings(i, probe, read);
        tally.shares.divide(read, weights);
        sendAll(node, i, tally);
        if (i > 0) {
          tally.take(i, read, weights);
          compare(tally, i, moment, low, weights);
        }
        node.weights[i] = null;
      }
    }
  }

  private void compare(CheckTally tally, int caseNumber, Installations.Moment moment, Optional<Probe> low,
      double[] weights) {
    if (low.isPresent()) {
      moment.readings(caseNumber, low.get(), readLow);
      tally.compare(caseNumber, read, readLow, weights);
    }
  }

  private void sendAll(SituationNode node, int caseNumber, CheckTally tally) {
    for (int way = Segments.NONE; way < tally.everTaken.length; way++) {
      double[] share = tally.shares.of(way);
      if (any(share)) {
        send(node, node.stand, way, caseNumber, share.clone());
        if (way != Segments.NONE) {
          tally.everTaken[way] = true;
        }
      }
    }
  }

  private void look(Step.SenseCheck check, SituationNode node) {
    SenseSplit shares = new SenseSplit(installations, check, open(check));
    if (!shares.allModeled()) {
      unmodelled.put(node.step, check.title());
    }
    Installations.Moment moment = course.question().shows(check) ? moment(node.stand.state()) : null;
    double[][] byWay = new double[check.ways().size() + 1][installations.samples()];
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        if (moment != null) {
          shares.look(moment, i);
        }
        shares.divide(node.weights[i], byWay);
        for (int way = 0; way < byWay.length; way++) {
          if (any(byWay[way])) {
            send(node, node.stand, way == check.ways().size() ? Segments.NONE : way, i, byWay[way].clone());
          }
        }
        node.weights[i] = null;
      }
    }
  }

  private void takeEveryWay(SituationNode node) {
    boolean[] open = open(tree.steps().get(node.step));
    int count = 0;
    for (boolean way : open) {
      count += way ? 1 : 0;
    }
    double part = 1.0 / Math.max(1, count);
    for (int i = 0; i < node.weights.length; i++) {
      if (node.weights[i] != null) {
        double[] share = Arrays.stream(node.weights[i]).map(weight -> weight * part).toArray();
        for (int way = count == 0 ? Segments.NONE : 0; way < open.length; way++) {
          if (way == Segments.NONE || open[way]) {
            send(node, node.stand, way, i, share.clone());
          }
        }
      }
    }
  }

  private void send(SituationNode from, Situation stand, int way, int caseNumber, double[] weights) {
    if (way == Segments.NONE) {
      ends.arrive(new End.Stuck(from.step), caseNumber, weights);
      return;
    }
    Way taken = tree.steps().get(from.step).ways().get(way);
    double mass = flow.take(from.step, way, caseNumber, weights);
    if (taken.target() instanceof Target.ToStep to) {
      SituationNode next = node(to.step(), stand.to(tree.steps().get(to.step())));
      flow.walk(caseNumber, mass * course.walks().minutes(stand.place(), next.stand.place()));
      next.add(caseNumber, weights);
    } else {
      ends.arrive(taken.target() instanceof Target.ToTree to ? new End.HandedOn(to.tree()) : new End.Stuck(from.step),
          caseNumber, weights);
    }
  }

  /** Whether a case would take a way on at a check, in some installation, whoever comes there. */
  public boolean wouldTake(Step.Check check, Situation stand, int caseNumber, int way) {
    if (check instanceof Step.MeterCheck) {
      CheckTally tally = Objects.requireNonNull(tallies.get(check));
      moment(stand.state()).readings(caseNumber, course.question().probe(tally.check, stand.place()).orElseThrow(),
          read);
      return Arrays.stream(read).anyMatch(reading -> tally.shares.mayTake(reading, way));
    }
    SenseSplit shares = new SenseSplit(installations, (Step.SenseCheck) check, open(check));
    shares.look(moment(stand.state()), caseNumber);
    return IntStream.range(0, read.length).anyMatch(sample -> shares.ways(sample)[way]);
  }

  private SituationNode node(int step, Situation stand) {
    return waiting.computeIfAbsent(step, s -> new LinkedHashMap<>())
        .computeIfAbsent(stand, s -> new SituationNode(step, stand, installations.cases().size()));
  }

  Installations.Moment moment(CircuitState state) {
    return moments.computeIfAbsent(state, s -> installations.at(s, plan.probes(s)));
  }

  private static boolean any(double[] weights) {
    for (double weight : weights) {
      if (weight > 0) {
        return true;
      }
    }
    return false;
  }
}
