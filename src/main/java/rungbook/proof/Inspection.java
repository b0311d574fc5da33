package rungbook.proof;

import java.util.List;
import java.util.Optional;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A walk as the rules see it.
 *
 * @param names of the cases, as the system writes them
 * @param ends in the order of the text
 */
record Inspection(Tree tree, Course course, Walker walker, List<String> names, List<Ends.Arrivals> ends, Proof proof,
    Witnesses witnesses) {

  private static final List<ProofRule> RULES = List.of(
      new LimitMisroutes(),
      new HealthyCondemned(),
      new FaultNeverFound(),
      new FaultFoundWrongly(),
      new AnswerLacking(),
      new StrayReadsLive(),
      new WaysNotTaken(),
      new ExpectationNotMet());

  List<Problem> problems() {
    Problems out = new Problems();
    RULES.forEach(rule -> rule.inspect(this, out));
    return out.inReadingOrder();
  }

  Step step(int step) {
    return tree.steps().get(step);
  }

  /** The way that one installation takes to an end, for the first problems at least. */
  Optional<Witness.Path> wayTo(End end, int caseNumber, int sample) {
    return witnesses.next() ? new Trail(tree, course, walker, caseNumber, sample).to(end) : Optional.empty();
  }

  Optional<Witness.Path> wayTo(int step, int caseNumber, int sample) {
    return witnesses.next() ? new Trail(tree, course, walker, caseNumber, sample).toStep(step) : Optional.empty();
  }
}
