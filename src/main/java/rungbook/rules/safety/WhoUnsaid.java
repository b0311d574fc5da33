package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.WorkKind;

/**
 * A step is work that not everybody may do, and nobody whom its {@code who} names may do it. A finding that refers says
 * who does it.
 */
public final class WhoUnsaid extends StateRule {

  static final Code WHO_UNSAID = Code.of("who-unsaid");

  @Override
  public List<Code> codes() {
    return List.of(WHO_UNSAID);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    boolean refers = step instanceof Step.Finding finding && finding.refer().isPresent();
    boolean asks = step instanceof Step.SenseCheck && step.header().cautions().isEmpty();
    return !refers && !asks;
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    RestrictedWork.of(step, context, point).forEach((kind, shown) -> {
      if (!covers(step, kind)) {
        Problem problem = Problem.at(WHO_UNSAID, step.source(), shown.span()).with("work", kind.words());
        out.add(problem.shownBy(shown.witness()));
      }
    });
  }

  private static boolean covers(Step step, WorkKind kind) {
    return step.header().who().stream().anyMatch(holder -> holder.covers().contains(kind));
  }
}
