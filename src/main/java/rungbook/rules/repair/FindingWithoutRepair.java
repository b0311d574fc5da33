package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A finding names a fault, and neither a step nor a person to call follows. */
public final class FindingWithoutRepair implements Rule {

  static final Code FINDING_WITHOUT_REPAIR = Code.of("finding-without-repair");

  @Override
  public List<Code> codes() {
    return List.of(FINDING_WITHOUT_REPAIR);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step instanceof Step.Finding finding && lacksRepair(finding)) {
        out.add(Problem.at(FINDING_WITHOUT_REPAIR, step.source(), finding.faults().get(0).span()).with("step",
            step.title()));
      }
    }
  }

  private static boolean lacksRepair(Step.Finding finding) {
    boolean stops = finding.refer().isPresent() || finding.evacuate() || finding.healthy();
    return !finding.faults().isEmpty() && !stops && finding.isLast() && finding.header().section().unread().isEmpty();
  }
}
