package rungbook.proof;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.proof.handover.HandOverPropagation;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.OtherTrees;
import rungbook.proof.plan.Population;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.proof.propagation.IntermittentPropagation;
import rungbook.proof.propagation.Propagation;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.report.Proof;
import rungbook.proof.rules.ProofRuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Span;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Tree;

/** The whole proof of a tree: order its steps, find the states it meets, carry every case through, report. */
public final class Proving {

  static final Code NOT_PROVED = Code.of("not-proved");

  private Proving() {}

  /** What only a proof can report. */
  public static Set<Code> codes() {
    return Stream.concat(Stream.of(NOT_PROVED), ProofRuleContext.codes()).collect(Collectors.toUnmodifiableSet());
  }

  /** A tree is proved, or there is a reason why not. */
  public sealed interface Result {
    record Proved(Proof proof) implements Result {}

    record Unproved(Problem why) implements Result {}

    default List<Problem> problems() {
      return this instanceof Proved proved ? proved.proof().problems() : List.of(((Unproved) this).why());
    }

    default Optional<Proof> proved() {
      return this instanceof Proved proved ? Optional.of(proved.proof()) : Optional.empty();
    }
  }

  /**
   * @param installations of the tree's own system
   * @param others the other trees of the library, by id
   * @param budget the most work that it may take
   */
  public static Result prove(Tree tree, Installations installations, WalkTimes walkTimes,
      OtherTrees others, Budget budget) {
    if (tree.system().isEmpty()) {
      return withoutSystem(tree);
    }
    Vocabulary words = tree.system().get();
    Optional<int[]> order = TopologicalOrder.of(tree.steps());
    if (order.isEmpty()) {
      return unproved(tree, "its ways on go in a circle, or it has no steps");
    }
    ProofContext context = ProofContext.of(installations, walkTimes, words, tree.meter(), others);
    int mostStates = Math.max(1, budget.solutions() / installations.solutions());
    StateEnumeration.Attempt plan = StateEnumeration.of(tree.steps(), order.get(), context, mostStates,
        budget.arrivals());
    if (plan.states().isEmpty()) {
      return unproved(tree, plan.why());
    }
    if (tree.symptoms().map(Population::stateCount).orElse(0L) > mostStates) {
      return unproved(tree, "its complaint is for more states than the " + mostStates + " that can be solved");
    }
    ProofContext onComplaint = context.on(tree.symptoms(), plan.states().get());
    PropagationResult propagation = Propagation.run(tree, onComplaint, plan.states().get(), order.get());
    Journeys journeys = HandOverPropagation.of(tree, onComplaint, propagation, budget);
    return new Result.Proved(
        new ProofBuilder(tree, onComplaint, plan.states().get(), propagation,
            IntermittentPropagation.of(tree, onComplaint, propagation.possibleAnswers(), order.get()), journeys, words)
            .proof());
  }

  /** A tree that names no system, or one that the library does not have. */
  public static Result withoutSystem(Tree tree) {
    return unproved(tree,
        tree.document().front("system").map(entry -> "there is no system `" + entry.value() + "` in `shared/systems/`")
            .orElse("it names no system"));
  }

  /** Says why a tree is not proved, where it names its system, else at its title. */
  public static Result unproved(Tree tree, String why) {
    Span span = tree.document().front("system").or(() -> tree.document().front("title")).map(entry -> entry.valueSpan())
        .orElse(Span.at(0));
    return new Result.Unproved(Problem.at(NOT_PROVED, tree.source(), span).with("why", why));
  }
}
