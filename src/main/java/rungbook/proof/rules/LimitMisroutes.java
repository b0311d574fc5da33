package rungbook.proof.rules;

import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.LimitFix;
import rungbook.proof.report.LimitPlace;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A limit sends no case the wrong way; if no other limit works either, that is said instead. */
public final class LimitMisroutes implements ProofRule {

  public static final Code LIMIT_UNRESOLVABLE = Code.of("limit-unresolvable");
  public static final Code LIMIT_UNSOUND = Code.of("limit-unsound");

  @Override
  public List<Code> codes() {
    return List.of(LIMIT_UNRESOLVABLE, LIMIT_UNSOUND);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Proof.Check check : context.proof().checks()) {
      for (Proof.Limit limit : check.limits()) {
        limit.worst().ifPresent(worst -> out.add(problem(context, limit, worst)));
      }
    }
  }

  private static Problem problem(ProofRuleContext context, Proof.Limit limit, Proof.Misrouted worst) {
    Step.MeterCheck check = (Step.MeterCheck) context.step(limit.step());
    String unit = check.quantity().unit();
    boolean fixable = limit.better().isPresent() && Bounds.leaveRoom(limit);
    Problem problem = Problem.at(fixable ? LIMIT_UNSOUND : LIMIT_UNRESOLVABLE, check.source(),
        LimitPlace.of(check, limit))
        .with("limit", limit.words(unit))
        .with("fault", worst.healthy() ? "healthy systems" : worst.fault())
        .with("share", worst.share() == 0 ? "the worst" : ReportNumbers.percent(worst.share()))
        .with("side", worst.below() ? "over" : "under")
        .with("reading", ReportNumbers.reading(worst.reading(), digit(context, check), check.quantity()))
        .with("circumstances", worst.circumstances())
        .with("better", limit.better().map(number -> ReportNumbers.number(number) + " " + unit).orElse(""))
        .with("room", Bounds.words(limit, unit))
        .with("why", limit.separable() ? "this meter cannot tell them apart" : "their readings overlap");
    return problem.fixedBy(LimitFix.fix(limit, check, digit(context, check)))
        .shownBy(context.wayTo(limit.step(), worst.caseNumber(), worst.sample()));
  }

  private static java.math.BigDecimal digit(ProofRuleContext context, Step.MeterCheck check) {
    return context.tree().meter().scale(check.quantity()).orElseThrow().digit();
  }
}
