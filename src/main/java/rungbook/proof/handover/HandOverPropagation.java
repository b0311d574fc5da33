package rungbook.proof.handover;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.Arriving;
import rungbook.proof.propagation.CaseFlow;
import rungbook.proof.propagation.End;
import rungbook.proof.propagation.Propagation;
import rungbook.proof.propagation.PropagationResult;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/** Carries every case and sample on from tree to tree, with the state in which the equipment is left. */
public final class HandOverPropagation {

  /** In a row: whoever is sent to more trees than this has no diagnosis. */
  private static final int MOST_TREES = 8;

  /** Trees that lead to many others can double the ways at each; what is left then is not followed. */
  private static final int MOST_LEGS = 100;

  private final ProofContext context;
  private final Budget budget;
  private final Deque<Leg> waiting = new ArrayDeque<>();
  private final List<Journeys.Arrival> arrivals = new ArrayList<>();
  private final List<Journeys.Circle> circles = new ArrayList<>();
  private final List<Journeys.Lost> lost = new ArrayList<>();
  private final double[] checks;
  private final double[] minutes;
  private int legs;

  private HandOverPropagation(ProofContext context, Budget budget) {
    this.context = context;
    this.budget = budget;
    checks = new double[context.installations().cases().size()];
    minutes = new double[checks.length];
  }

  /** @param result of the tree where the work begins */
  public static Journeys of(Tree tree, ProofContext context, PropagationResult result, Budget budget) {
    var whole = new HandOverPropagation(context, budget);
    var entry = new Target.ToTree(tree.id(), Optional.empty());
    whole.waiting.add(new Leg(Optional.empty(), entry, tree, 0, context, result));
    while (!whole.waiting.isEmpty()) {
      Cancellation.check();
      whole.account(whole.waiting.poll());
    }
    return new Journeys(whole.arrivals, whole.circles, whole.lost, whole.checks, whole.minutes);
  }

  private void account(Leg leg) {
    CaseFlow flow = leg.result().flow();
    Arrays.setAll(checks, i -> checks[i] + flow.checks(i));
    Arrays.setAll(minutes, i -> minutes[i] + flow.minutes(i));
    Optional<Target.ToTree> through = leg.all().stream().skip(1).findFirst().map(Leg::entry);
    for (ArrivalTable.Arrivals end : leg.result().ends()) {
      if (!(end.end() instanceof End.HandedOn)) {
        arrivals.add(new Journeys.Arrival(through, leg.tree(), end));
      }
    }
    leg.result().handedOn().forEach((other, arriving) -> handOn(leg, other, arriving));
  }

  private void handOn(Leg leg, Target.ToTree other, Arriving arriving) {
    double[] shares = arriving.shares();
    Optional<Tree> tree = next(leg, other);
    int first = tree.flatMap(next -> other.step().map(id -> index(next.steps(), id))).orElse(0);
    if (leg.hasEntered(other.tree(), first)) {
      circles.add(new Journeys.Circle(leg, other, shares, arriving.samples()));
      return;
    }
    boolean isNear = leg.depth() < MOST_TREES && legs < MOST_LEGS
        && Arrays.stream(shares).anyMatch(share -> share > Share.ROUNDING);
    Optional<Leg> next = tree.filter(one -> isNear).flatMap(one -> TopologicalOrder.of(one.steps())
        .filter(order -> IntStream.of(order).anyMatch(step -> step == first))
        .flatMap(order -> next(leg, other, one, order, first, arriving)));
    next.ifPresentOrElse(waiting::add, () -> lost.add(new Journeys.Lost(
        leg.all().stream().skip(1).findFirst().map(Leg::entry).orElse(other), other, shares)));
  }

  private Optional<Tree> next(Leg leg, Target.ToTree other) {
    return leg.known(other.tree())
        .or(() -> context.others().tree(other.tree()).filter(next -> isOfSameSystem(next, leg.tree())));
  }

  private static boolean isOfSameSystem(Tree one, Tree other) {
    return one.system().map(Vocabulary::id).equals(other.system().map(Vocabulary::id));
  }

  private Optional<Leg> next(Leg leg, Target.ToTree other, Tree tree, int[] order, int first, Arriving arriving) {
    legs++;
    ProofContext here = ProofContext.of(context.system(), context.walkTimes(), tree.system().orElseThrow(),
        tree.meter(), context.others());
    int mostStates = Math.max(1, budget.solutions() / context.installations().solutions());
    return StateEnumeration.of(tree.steps(), order, here,
        new StateEnumeration.Beginning(first, arriving.situations()), mostStates, budget.arrivals()).states()
        .map(states -> new Leg(Optional.of(leg), other, tree, first, here,
            Propagation.follow(tree, here, states, order, first, arriving)));
  }

  /** −1 if the tree has no such step. */
  private static int index(List<Step> steps, String id) {
    return IntStream.range(0, steps.size()).filter(i -> steps.get(i).id().equals(id)).findFirst().orElse(-1);
  }
}
