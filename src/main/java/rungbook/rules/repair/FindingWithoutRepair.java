package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Step;

/** A finding names a fault and nothing follows, in a tree that has an {@code end} for its other findings. */
public final class FindingWithoutRepair implements Rule {

  static final Code FINDING_WITHOUT_REPAIR = Code.of("finding-without-repair");

  @Override
  public List<Code> codes() {
    return List.of(FINDING_WITHOUT_REPAIR);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    if (steps.stream().noneMatch(Step.End.class::isInstance)) {
      return;
    }
    for (Step step : steps) {
      if (step instanceof Step.Finding finding && lacksRepair(finding)) {
        out.add(Problem.at(FINDING_WITHOUT_REPAIR, step.source(), finding.faults().get(0).span()).with("step",
            step.title()));
      }
    }
  }

  private static boolean lacksRepair(Step.Finding finding) {
    boolean stops = finding.refer().isPresent() || finding.evacuate() || finding.faults().isEmpty();
    return finding.isLast() && !stops && finding.header().section().unread().isEmpty()
        && !hasRepairOfItsOwn(finding);
  }

  /** A repair in the finding's own lines or words is accepted in place of steps. */
  private static boolean hasRepairOfItsOwn(Step.Finding finding) {
    Span words = new Span(finding.header().block().span().end(), finding.header().section().span().end());
    return !finding.repair().isEmpty() || !finding.source().text(words).isBlank();
  }
}
