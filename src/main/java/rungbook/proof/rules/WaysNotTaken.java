package rungbook.proof.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.Share;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * Some case gives each answer of a check; a check of which only one is ever given tells nothing. A check that reads
 * again is for faults that come and go, which are no cases.
 */
final class WaysNotTaken implements ProofRule {

  static final Code ANSWER_IMPOSSIBLE = Code.of("answer-impossible");
  static final Code CHECK_TELLS_NOTHING = Code.of("check-tells-nothing");
  static final Code WAY_UNTAKEN = Code.of("way-untaken");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_IMPOSSIBLE, CHECK_TELLS_NOTHING, WAY_UNTAKEN);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (int step = 0; step < context.tree().steps().size(); step++) {
      boolean modeled = !context.propagation().unmodeled().containsKey(step);
      if (modeled && context.propagation().flow().reached(step) && context.step(step) instanceof Step.Check check
          && check.ways().size() > 1 && !check.isAgain() && !confirms(step, check, context)) {
        inspect(step, check, context, out);
      }
    }
  }

  /** Whether a check confirms the complaint before any other divides the faults: that is good practice. */
  private static boolean confirms(int step, Step.Check check, ProofRuleContext context) {
    return check instanceof Step.SenseCheck sense && isOfComplaint(sense, context.tree())
        && Arrays.stream(context.proofContext().population().cases())
            .allMatch(i -> Share.isAll(arrives(step, i, context)));
  }

  private static boolean isOfComplaint(Step.SenseCheck check, Tree tree) {
    return tree.symptoms().stream()
        .flatMap(symptoms -> Stream.of(symptoms.seen(), symptoms.notSeen(), symptoms.notAllSeen()))
        .flatMap(List::stream)
        .anyMatch(seen -> check.things().stream().anyMatch(thing -> isOf(seen, thing, tree)));
  }

  /** A complaint names a sight, or a value with its sight. */
  private static boolean isOf(NameRef seen, NameRef thing, Tree tree) {
    return thing.key().equals(seen.key()) || tree.system().flatMap(system -> system.sight(seen.key()))
        .filter(sight -> thing.key().equals(sight.key())).isPresent();
  }

  private static double arrives(int step, int caseNumber, ProofRuleContext context) {
    return IntStream.range(0, context.step(step).ways().size())
        .mapToDouble(way -> context.propagation().flow().taken(step, way, caseNumber)).sum();
  }

  private static void inspect(int step, Step.Check check, ProofRuleContext context, Problems out) {
    int taken = 0;
    for (int way = 0; way < check.ways().size(); way++) {
      taken += isTaken(step, way, context) ? 1 : 0;
    }
    if (taken == 1) {
      Span span = check instanceof Step.MeterCheck meter ? meter.quantitySpan()
          : ((Step.SenseCheck) check).things().get(0).span();
      out.add(Problem.at(CHECK_TELLS_NOTHING, check.source(), span).with("check", check.title()));
      return;
    }
    for (int way = 0; way < check.ways().size() && taken > 1; way++) {
      if (!isTaken(step, way, context)) {
        out.add(Problem
            .at(canBeGiven(step, way, context) ? WAY_UNTAKEN : ANSWER_IMPOSSIBLE, check.source(),
                check.ways().get(way).answerSpan())
            .with("answer", check.ways().get(way).written()));
      }
    }
  }

  private static boolean isTaken(int step, int way, ProofRuleContext context) {
    CheckTally tally = context.propagation().tallies().get(step);
    if (tally != null) {
      return tally.isTaken(way);
    }
    for (int i = 0; i < context.names().size(); i++) {
      if (context.propagation().flow().taken(step, way, i) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether any fault would give the answer, were it to come here. */
  private static boolean canBeGiven(int step, int way, ProofRuleContext context) {
    return Objects.requireNonNull(context.propagation().situations().get(step)).stream()
        .anyMatch(situation -> context.propagation().possibleAnswers().isPossible(step, way, situation));
  }
}
