package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.Target;

/**
 * At an end, or where another tree takes over, on some path, a control is not at the position where the tree found it:
 * its first. A finding without ways on is no such end: whoever is called may need the call. Common practice, no source.
 */
public final class ControlLeft extends StateRule {

  static final Code CONTROL_LEFT = Code.of("control-left");

  @Override
  public List<Code> codes() {
    return List.of(CONTROL_LEFT);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.tree().system().isPresent();
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.End
        || step.ways().stream().anyMatch(way -> way.target() instanceof Target.ToTree);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    FactTable facts = context.state().facts();
    point.finish();
    for (int at = point.nextMay(Fact.AT, 0); at != FactTable.NONE; at = point.nextMay(Fact.AT, at + 1)) {
      if (!facts.isStart(at)) {
        out.add(Problem.at(CONTROL_LEFT, step.source(), step.header().titleSpan()).with("setting", facts.words(at))
            .shownBy(point.showHolding(at, "")));
        return;
      }
    }
  }
}
