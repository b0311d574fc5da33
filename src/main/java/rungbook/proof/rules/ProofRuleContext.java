package rungbook.proof.rules;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.proof.accounting.Share;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.SituationPath;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.propagation.WitnessSearch;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A propagation as the rules see it.
 *
 * @param deadProofs by step, the situations in which something is proved dead there
 * @param names of the cases, as the system writes them
 * @param ends in the order of the text
 * @param journeys through the trees that take over
 */
public record ProofRuleContext(Tree tree, ProofContext proofContext, PropagationResult propagation,
    Map<Integer, Set<Situation>> deadProofs, List<String> names,
    List<ArrivalTable.Arrivals> ends, Journeys journeys, Proof proof, WitnessBudget witnesses) {

  private static final ProofRule COMPLAINT = new ComplaintShown();
  private static final List<ProofRule> RULES = List.of(
      COMPLAINT,
      new LimitMisroutes(),
      new HealthyCondemned(),
      new FaultNeverFound(),
      new FaultFoundWrongly(),
      new HandedInCircle(),
      new FaultCalledHealthy(),
      new AnswerLacking(),
      new StrayReadsLive(),
      new WaysNotTaken(),
      new RepairNotPassing(),
      new WrongRepairUnnoticed(),
      new SecondFaultUnnoticed(),
      new ExpectationNotMet(),
      new ReadDuringDelay(),
      new ProveDeadTellsNothing());

  /** What the rules may report. */
  public static Stream<Code> codes() {
    return RULES.stream().flatMap(rule -> rule.codes().stream());
  }

  /** Where no fault gives the complaint, nothing else is said: every fault would seem to go nowhere. */
  public List<Problem> problems() {
    Problems out = new Problems();
    List<ProofRule> rules = proofContext.population().hasFaults() ? RULES : List.of(COMPLAINT);
    rules.forEach(rule -> rule.inspect(this, out));
    return out.inReadingOrder();
  }

  /** The cases that a finding names. */
  BitSet named(Step.Finding finding) {
    return proofContext.findings().named(finding);
  }

  Step step(int step) {
    return tree.steps().get(step);
  }

  /** Whether enough of a case arrives at an end, in one variant of the system at least. */
  boolean isReported(ArrivalTable.Arrivals arrivals, int caseNumber) {
    return Share.isReported(arrivals.shares()[caseNumber]) || !variantsOf(arrivals, caseNumber).isEmpty();
  }

  /** The variants in which a case arrives at an end, if it does not in the base: {@code , variant blower on Y}. */
  String onlyIn(ArrivalTable.Arrivals arrivals, int caseNumber) {
    List<String> in = variantsOf(arrivals, caseNumber);
    return in.isEmpty() || in.contains("") ? "" : ", only in the variant " + String.join(", ", in);
  }

  private List<String> variantsOf(ArrivalTable.Arrivals arrivals, int caseNumber) {
    List<Installations.Variant> variants = proofContext.installations().variants();
    return IntStream.range(0, variants.size())
        .filter(variant -> Share.isReported(arrivals.byVariant()[variant][caseNumber]))
        .mapToObj(variant -> variants.get(variant).name()).toList();
  }

  /** The way that one installation takes to an end, for the first problems at least. */
  Optional<Witness.Path> wayTo(End end, int caseNumber, int sample) {
    return witnesses.next() ? search(caseNumber, sample).to(end) : Optional.empty();
  }

  /** The way of the installation that shows best how a case comes to an end. */
  Optional<Witness.Path> wayTo(End end, int caseNumber) {
    return ends.stream().filter(arrivals -> arrivals.end().equals(end)).findFirst()
        .flatMap(arrivals -> wayTo(end, caseNumber, arrivals.witness()[caseNumber]));
  }

  Optional<Witness.Path> wayTo(int step, int caseNumber, int sample) {
    return witnesses.next() ? search(caseNumber, sample).toStep(step) : Optional.empty();
  }

  /** A way to a step in one situation, whatever is read on it. */
  Optional<Witness.Path> wayTo(int step, Situation situation) {
    return witnesses.next() ? new SituationPath(tree.steps(), proofContext.start()).to(step, situation)
        : Optional.empty();
  }

  private WitnessSearch search(int caseNumber, int sample) {
    Installations installations = proofContext.installations();
    return new WitnessSearch(tree, proofContext.start(), propagation.possibleAnswers(), caseNumber, sample,
        sample < 0 ? "" : installations.variants().get(installations.variant(sample)).name());
  }
}
