package rungbook.rules.state;

import java.util.List;
import java.util.Optional;
import rungbook.action.StateChange;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/**
 * A lead or a hand goes behind a panel that, on some path, is not open. Looking and listening may be possible from
 * outside; a power switch and its terminals are outside.
 */
public final class PanelClosed extends StateRule {

  static final Code PANEL_CLOSED = Code.of("panel-closed");

  @Override
  public List<Code> codes() {
    return List.of(PANEL_CLOSED);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.tree().system().isPresent();
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return panel(step, context.tree().system().get()).isPresent();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    Vocabulary system = context.tree().system().get();
    inspect(step, panel(step, system).get(), system, context.state(), point, out);
  }

  /** The panel at a step's location. */
  private static Optional<String> panel(Step step, Vocabulary system) {
    Location location = system.locations().get(FactTable.place(step));
    return location == null ? Optional.empty() : location.panel();
  }

  private static void inspect(Step step, String panel, Vocabulary system, PathFacts state, PathFacts.ProgramPoint point,
      Problems out) {
    int open = state.facts().of(Fact.OPEN, Names.key(panel));
    if (step instanceof Step.MeterCheck check) {
      if (!check.leads().isEmpty() && !point.must(open) && !isReadAtASwitch(check, system)) {
        report(step, check.leads().get(0).span(), panel, open, point, out);
      }
      return;
    }
    for (Action action : step.actions()) {
      if (!point.must(open) && reachesIn(action, state.facts()) && !Sources.mayBeAheadOfAny(system, action.key())) {
        report(step, action.thing().span(), panel, open, point, out);
        return;
      }
      point.pass();
    }
  }

  private static boolean isReadAtASwitch(Step.MeterCheck check, Vocabulary system) {
    for (NameRef lead : check.leads()) {
      if (Sources.mayBeAheadOfAny(system, lead.key())) {
        return true;
      }
    }
    return false;
  }

  /** Whether an action takes hands or leads behind a panel. */
  public static boolean reachesIn(Action action, FactTable facts) {
    for (StateChange change : action.changes()) {
      if ((change instanceof StateChange.Begin begin && begin.condition().isBehindPanel())
          || (change instanceof StateChange.End end && end.condition().isBehindPanel() && isBegun(end, facts))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the tree ever begins the condition that is ended; if not, there is nothing to put back. */
  private static boolean isBegun(StateChange.End end, FactTable facts) {
    return facts.of(end.condition(), end.key()) != FactTable.NONE;
  }

  private static void report(Step step, Span span, String panel, int open, PathFacts.ProgramPoint point, Problems out) {
    Problem problem = Problem.at(PANEL_CLOSED, step.source(), span).with("panel", panel).with("place",
        step.at().orElseThrow().text());
    out.add(problem.shownBy(point.showLacking(open, "")));
  }
}
