package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.state.Sources;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/**
 * An end or a finding leaves a panel open with a guard although, on some path, nothing behind it was found still live.
 * A panel that can go back on goes back on: a guard leaves sooner or later.
 */
public final class GuardNotNeeded extends StateRule {

  static final Code GUARD_NOT_NEEDED = Code.of("guard-not-needed");

  @Override
  public List<Code> codes() {
    return List.of(GUARD_NOT_NEEDED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return !step.guarded().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    point.finish();
    for (NameRef panel : step.guarded()) {
      int live = stillLive(panel.key(), context, point);
      if (live == FactTable.NONE || !point.may(context.state().facts().of(Fact.OPEN, panel.key()))) {
        out.add(Problem.at(GUARD_NOT_NEEDED, step.source(), panel.span()).with("panel", panel.text())
            .shownBy(point.showLacking(FactTable.NONE, "")));
      }
    }
  }

  /** The fact that a place behind a panel was found still live, on every path. */
  private static int stillLive(String panel, RuleContext context, PathFacts.ProgramPoint point) {
    int live = point.nextMay(Fact.STILL_LIVE, 0);
    while (live != FactTable.NONE && !(point.must(live) && isBehind(panel, live, context))) {
      live = point.nextMay(Fact.STILL_LIVE, live + 1);
    }
    return live;
  }

  private static boolean isBehind(String panel, int live, RuleContext context) {
    return Sources.mayBeBehind(panel, context.state().facts().words(live), context.tree().system());
  }
}
