package rungbook.proof.propagation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.ReadingSplit;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.StateEnumeration;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * Which cases can come to each step of a tree, and take each way on from it, up to the findings. Needs few
 * installations: a case is taken to read anything between its lowest and its highest reading in a variant. In doubt a
 * case comes along: whoever follows the tree must not be told that the fault is elsewhere when it is not.
 */
public final class SuspectPropagation {

  private final Tree tree;
  private final ProofContext context;
  private final Installations installations;
  private final ObservedStates observed;
  private final ReachableFaults reachable;
  private final Map<Integer, Map<Situation, BitSet>> waiting = new HashMap<>();
  private final Map<Integer, BitSet> arriving = new HashMap<>();
  private final Map<Integer, List<BitSet>> taking = new HashMap<>();

  /**
   * Case numbers as bits, by step; a step that no case reaches is left out.
   *
   * @param taking by way on
   */
  public record Result(Map<Integer, BitSet> arriving, Map<Integer, List<BitSet>> taking) {}

  private SuspectPropagation(Tree tree, ProofContext context, StateEnumeration states, int[] order) {
    this.tree = tree;
    this.context = context;
    this.installations = context.system();
    this.observed = new ObservedStates(installations, states);
    this.reachable = new ReachableFaults(context.findings(), context.findings().of(tree.steps(), order));
  }

  /**
   * @param context of the cases that show the complaint
   * @param states that the tree meets
   * @param order of the steps that can be reached, each after all that lead to it
   */
  public static Result of(Tree tree, ProofContext context, StateEnumeration states, int[] order) {
    var suspects = new SuspectPropagation(tree, context, states, order);
    suspects.begin();
    for (int step : order) {
      Cancellation.check();
      Optional.ofNullable(suspects.waiting.remove(step)).ifPresent(here -> suspects.pass(step, here));
    }
    return new Result(suspects.arriving, suspects.taking);
  }

  private void begin() {
    var everyCase = new BitSet();
    IntStream.of(context.population().cases()).forEach(everyCase::set);
    arrive(0, context.start(), everyCase);
  }

  private void arrive(int step, Situation from, BitSet cases) {
    waiting.computeIfAbsent(step, any -> new LinkedHashMap<>())
        .computeIfAbsent(from.to(tree.steps().get(step)), any -> new BitSet()).or(cases);
  }

  private void pass(int number, Map<Situation, BitSet> here) {
    Step step = tree.steps().get(number);
    var together = new BitSet();
    here.values().forEach(together::or);
    arriving.put(number, together);
    if (step instanceof Step.Finding || step instanceof Step.End) {
      return;
    }
    var ways = new ArrayList<BitSet>();
    step.ways().forEach(way -> ways.add(new BitSet()));
    taking.put(number, ways);
    here.forEach((situation, cases) -> {
      if (step instanceof Step.Check check) {
        check(number, check, situation, cases);
      } else {
        task(number, step, situation, cases);
      }
    });
  }

  /** A task is taken to be done as it says: its first way on. */
  private void task(int number, Step task, Situation situation, BitSet cases) {
    if (!task.ways().isEmpty()) {
      observed.expect(situation.after(task).state(), (BitSet) cases.clone());
      context.memory().after(situation, task, cases).forEach((after, of) -> send(number, 0, after, of));
    }
  }

  private void check(int number, Step.Check check, Situation situation, BitSet cases) {
    IntFunction<boolean[]> possible = possible(check, situation, cases);
    BitSet[] byWay = check.ways().stream().map(way -> new BitSet()).toArray(BitSet[]::new);
    cases.stream().forEach(one -> {
      boolean[] ways = possible.apply(one);
      for (int way = 0; way < byWay.length; way++) {
        byWay[way].set(one, ways[way]);
      }
    });
    for (int way = 0; way < byWay.length; way++) {
      send(number, way, situation, byWay[way]);
    }
  }

  private void send(int from, int way, Situation situation, BitSet cases) {
    if (!cases.isEmpty()) {
      Objects.requireNonNull(taking.get(from), "each step has its ways").get(way).or(cases);
      if (tree.steps().get(from).ways().get(way).target() instanceof Target.ToStep to) {
        arrive(to.step(), situation, cases);
      }
    }
  }

  /** By case, the ways that it may take. */
  private IntFunction<boolean[]> possible(Step.Check check, Situation situation, BitSet cases) {
    if (check instanceof Step.MeterCheck meter) {
      Optional<Meter.Scale> scale = tree.meter().scale(meter.quantity());
      Optional<Probe> probe = context.probePlan().probe(meter, situation.place());
      return scale.isEmpty() || probe.isEmpty() ? one -> reachable.openWays(check, one)
          : measured(meter, ReadingSplit.of(meter, scale.get(), installations.samples()), probe.get(),
              looking(situation, cases));
    }
    Step.SenseCheck sense = (Step.SenseCheck) check;
    boolean isLookedAt = context.probePlan().shows(sense);
    return isLookedAt ? seen(sense, looking(situation, cases)) : one -> reachable.openWays(check, one);
  }

  private Installations.Observations looking(Situation situation, BitSet cases) {
    Installations.Observations observations = observed.in(situation.state());
    observations.expect((BitSet) cases.clone());
    return observations;
  }

  private IntFunction<boolean[]> seen(Step.SenseCheck check, Installations.Observations observations) {
    return one -> {
      SenseSplit split = new SenseSplit(installations, check, reachable.openWays(check, one));
      split.look(observations, one);
      boolean[] possible = new boolean[check.ways().size()];
      having(one).forEach(sample -> or(possible, split.ways(sample)));
      return possible;
    };
  }

  private static void or(boolean[] all, boolean[] more) {
    for (int way = 0; way < all.length; way++) {
      all[way] |= more[way];
    }
  }

  private IntFunction<boolean[]> measured(Step.MeterCheck check, ReadingSplit split, Probe probe,
      Installations.Observations observations) {
    double[] read = new double[installations.samples()];
    return one -> {
      observations.readings(one, probe, read);
      boolean[] possible = new boolean[check.ways().size()];
      for (int way = 0; way < possible.length; way++) {
        possible[way] = mayTake(split, read, one, way);
      }
      return possible;
    };
  }

  private boolean mayTake(ReadingSplit split, double[] read, int caseNumber, int way) {
    double[] lowest = new double[installations.variants().size()];
    double[] highest = new double[lowest.length];
    Arrays.fill(lowest, Double.POSITIVE_INFINITY);
    return having(caseNumber).anyMatch(sample -> {
      int variant = installations.variant(sample);
      if (read[sample] >= 0 && read[sample] < Double.POSITIVE_INFINITY) {
        lowest[variant] = Math.min(lowest[variant], read[sample]);
        highest[variant] = Math.max(highest[variant], read[sample]);
        return split.mayTake(lowest[variant], highest[variant], way);
      }
      return split.mayTake(read[sample], way);
    });
  }

  /** The installations that can have the faults of a case. */
  private IntStream having(int caseNumber) {
    return IntStream.range(0, installations.samples()).filter(sample -> installations.weight(caseNumber, sample) > 0);
  }
}
