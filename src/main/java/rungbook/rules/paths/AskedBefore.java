package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.WitnessPaths;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * A check asks what is already known on every path to it. Reports the strongest of three: only one answer is left, some
 * answer is ruled out, or the question is repeated. Each names the earlier check on a path. A check that asks again on
 * purpose is left out. Once the witness budget is spent, nothing more is reported for this tree.
 */
public final class AskedBefore implements Rule {

  static final Code ANSWER_RULED_OUT = Code.of("answer-ruled-out");
  static final Code CHECK_REPEATED = Code.of("check-repeated");
  static final Code CHECK_SETTLED = Code.of("check-settled");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_RULED_OUT, CHECK_REPEATED, CHECK_SETTLED);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    WitnessPaths witnesses = new WitnessPaths(context.tree(), context.state().graph());
    AvailableAnswers.of(context).forEach((step, askings) -> {
      Step.Check check = (Step.Check) context.tree().steps().get(step);
      if (!check.isAgain() && tellsSomething(askings) && !witnesses.isSpent()) {
        new Look(check, askings, context, witnesses).inspect(out);
      }
    });
  }

  /**
   * Whether anything is known about the answers of a check. A check with no possible answer left is reported at the
   * check that ruled out the last one.
   */
  private static boolean tellsSomething(List<AvailableAnswers.Asking> askings) {
    boolean known = false;
    for (AvailableAnswers.Asking asking : askings) {
      if (!asking.isOpen()) {
        return false;
      }
      known |= asking.isNarrowed() || asking.isRepeated();
    }
    return known;
  }

  private record Look(Step.Check check, List<AvailableAnswers.Asking> askings, RuleContext context,
      WitnessPaths witnesses) {

    void inspect(Problems out) {
      List<Integer> open = new ArrayList<>();
      List<Integer> ruledOut = new ArrayList<>();
      for (int way = 0; way < check.ways().size(); way++) {
        if (canLead(way)) {
          (mayLead(way) ? open : ruledOut).add(way);
        }
      }
      if (open.size() == 1 && !ruledOut.isEmpty()) {
        Way left = check.ways().get(open.get(0));
        out.add(problem(CHECK_SETTLED, readSpan(), askings.get(0)).with("answer", left.written()));
      } else if (!ruledOut.isEmpty()) {
        ruledOut.forEach(way -> out.add(answerRuledOut(check.ways().get(way), way)));
      } else if (isRepeated()) {
        out.add(problem(CHECK_REPEATED, readSpan(), askings.get(0)));
      }
    }

    private Problem answerRuledOut(Way way, int index) {
      AvailableAnswers.Asking why = askings.stream().filter(asking -> !asking.mayLead(index)).findFirst().orElseThrow();
      return problem(ANSWER_RULED_OUT, way.answerSpan(), why).with("answer", way.written());
    }

    private boolean canLead(int way) {
      return askings.stream().allMatch(asking -> asking.canLead(way));
    }

    private boolean mayLead(int way) {
      return askings.stream().allMatch(asking -> asking.mayLead(way));
    }

    private boolean isRepeated() {
      return askings.size() == Question.of(check).size()
          && askings.stream().allMatch(AvailableAnswers.Asking::isRepeated);
    }

    private Problem problem(Code code, Span span, AvailableAnswers.Asking asking) {
      int[] path = asking.path();
      Problem problem = Problem.at(code, check.source(), span).with("earlier", earlier(path, asking));
      Optional<Witness> witness = witnesses.along(path, asking.step, "");
      return problem.shownBy(witness);
    }

    /** The title of the last step on a path that asked the same question. */
    private String earlier(int[] path, AvailableAnswers.Asking asking) {
      for (int i = path.length - 1; i >= 0; i--) {
        Step step = context.tree().steps().get(context.state().graph().from(path[i]));
        if (step instanceof Step.Check before && Question.of(before).contains(asking.question)) {
          return before.title();
        }
      }
      return check.title();
    }

    private Span readSpan() {
      return check instanceof Step.MeterCheck meter ? meter.quantitySpan()
          : ((Step.SenseCheck) check).things().get(0).span();
    }
  }
}
