package rungbook.proof.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.LimitFix;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Answer;
import rungbook.tree.Step;

/** A limit sends no case the wrong way; if no other limit works either, that is said instead. */
final class LimitMisroutes implements ProofRule {

  static final Code LIMIT_UNRESOLVABLE = Code.of("limit-unresolvable");
  static final Code LIMIT_UNSOUND = Code.of("limit-unsound");

  @Override
  public List<Code> codes() {
    return List.of(LIMIT_UNRESOLVABLE, LIMIT_UNSOUND);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Proof.Check check : context.proof().checks()) {
      for (Proof.Limit limit : check.limits()) {
        worst(limit).ifPresent(worst -> out.add(problem(context, limit, worst)));
      }
    }
  }

  /** The healthy system first: even one at a corner of its tolerances must not raise a false alarm. */
  private static Optional<Proof.Misrouted> worst(Proof.Limit limit) {
    return limit.misrouted().stream().filter(one -> one.healthy() || Share.isReported(one.share()))
        .max(Comparator.comparing(Proof.Misrouted::healthy).thenComparingDouble(Proof.Misrouted::likelihood));
  }

  private static Problem problem(ProofRuleContext context, Proof.Limit limit, Proof.Misrouted worst) {
    Step.MeterCheck check = (Step.MeterCheck) context.step(limit.step());
    String unit = check.quantity().unit();
    boolean fixable = limit.better().isPresent() && Bounds.leaveRoom(limit);
    Problem problem = Problem.at(fixable ? LIMIT_UNSOUND : LIMIT_UNRESOLVABLE, check.source(), span(check, limit))
        .with("limit", ReportNumbers.number(limit.at()) + " " + unit)
        .with("fault", worst.healthy() ? "healthy systems" : worst.fault())
        .with("share", worst.share() == 0 ? "the worst" : ReportNumbers.percent(worst.share()))
        .with("side", worst.below() ? "over" : "under")
        .with("reading", ReportNumbers.reading(worst.reading(), digit(context, check), check.quantity()))
        .with("circumstances", worst.circumstances())
        .with("better", limit.better().map(number -> ReportNumbers.number(number) + " " + unit).orElse(""))
        .with("room", Bounds.words(limit, unit))
        .with("why", limit.separable() ? "this meter cannot tell them apart" : "their readings overlap");
    return problem.fixedBy(LimitFix.fix(limit, check))
        .shownBy(context.wayTo(limit.step(), worst.caseNumber(), worst.sample()));
  }

  private static java.math.BigDecimal digit(ProofRuleContext context, Step.MeterCheck check) {
    return context.tree().meter().scale(check.quantity()).orElseThrow().digit();
  }

  /** The answer in whose text the limit is written. */
  private static Span span(Step.MeterCheck check, Proof.Limit limit) {
    var upper = check.ways().get(limit.upperWay());
    boolean inUpper = upper.answer() instanceof Answer.Within within
        && within.range().low().filter(low -> low.compareTo(limit.at()) == 0).isPresent();
    return (inUpper ? upper : check.ways().get(limit.lowerWay())).answerSpan();
  }
}
