package rungbook.proof.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.propagation.End;
import rungbook.proof.report.LimitPlace;
import rungbook.proof.report.Proof;
import rungbook.proof.rules.FaultNeverFound;
import rungbook.proof.rules.HealthyCondemned;
import rungbook.proof.rules.LimitMisroutes;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** Finds the data of the proof that a problem is about. */
final class RecommendationFinder {

  private final Proof proof;

  RecommendationFinder(Proof proof) {
    this.proof = proof;
  }

  Recommendation of(Problem problem) {
    Code code = problem.code();
    Optional<Recommendation> found = Optional.empty();
    if (code.equals(LimitMisroutes.LIMIT_UNSOUND) || code.equals(LimitMisroutes.LIMIT_UNRESOLVABLE)) {
      found = limit(problem);
    } else if (code.equals(HealthyCondemned.HEALTHY_CONDEMNED)) {
      found = alarm(problem);
    } else if (code.equals(FaultNeverFound.FAULT_NEVER_FOUND)) {
      found = fault(problem);
    }
    return found.orElseGet(() -> new Recommendation.Correct(problem));
  }

  private Optional<Recommendation> limit(Problem problem) {
    for (Proof.Check check : proof.checks()) {
      Step.MeterCheck step = (Step.MeterCheck) proof.tree().steps().get(check.step());
      for (Proof.Limit limit : check.limits()) {
        Optional<Proof.Misrouted> worst = limit.worst();
        if (worst.isPresent() && isAt(problem, step, limit)) {
          Recommendation.Example example = example(step, limit, worst.get());
          return Optional.of(problem.code().equals(LimitMisroutes.LIMIT_UNSOUND)
              ? new Recommendation.MoveLimit(problem, step, limit, example)
              : new Recommendation.CheckAnotherWay(problem, step, limit, example));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isAt(Problem problem, Step.MeterCheck step, Proof.Limit limit) {
    return problem.source().name().equals(step.source().name())
        && problem.span().equals(LimitPlace.of(step, limit))
        && limit.words(step.quantity().unit()).equals(problem.facts().get("limit"));
  }

  private Recommendation.Example example(Step.MeterCheck step, Proof.Limit limit, Proof.Misrouted one) {
    var digit = proof.tree().meter().scale(step.quantity()).orElseThrow().digit();
    Way taken = step.ways().get(one.below() ? limit.upperWay() : limit.lowerWay());
    return new Recommendation.Example(one, ReportNumbers.reading(one.reading(), digit, step.quantity()),
        taken.written(), title(taken));
  }

  /** A step's title; of another tree, the words of the link. */
  private String title(Way way) {
    return way.target() instanceof Target.ToStep to ? proof.tree().steps().get(to.step()).title() : way.label();
  }

  private Optional<Recommendation> alarm(Problem problem) {
    return proof.falseAlarms().stream()
        .filter(alarm -> isTitle(problem, proof.tree().steps().get(alarm.finding()))).findFirst()
        .map(alarm -> new Recommendation.ClearGoodUnits(problem, alarm));
  }

  private static boolean isTitle(Problem problem, Step step) {
    return problem.source().name().equals(step.source().name())
        && problem.span().equals(step.header().titleSpan());
  }

  private Optional<Recommendation> fault(Problem problem) {
    String name = problem.facts().getOrDefault("fault", "");
    return proof.outcomes().stream().skip(1).filter(outcome -> outcome.name().equalsIgnoreCase(name)).findFirst()
        .map(outcome -> new Recommendation.FindFault(problem, outcome, ends(outcome.name())));
  }

  private List<String> ends(String fault) {
    Predicate<Proof.Arrived> arrives = one -> one.fault().equals(fault) && Share.isReported(one.share());
    return proof.endings().stream().filter(ending -> ending.arrived().stream().anyMatch(arrives))
        .map(RecommendationFinder::place).toList();
  }

  private static String place(Proof.Ending ending) {
    return "`" + ending.title() + "`"
        + (ending.end() instanceof End.Stuck ? ", where no answer takes the reading" : "");
  }
}
