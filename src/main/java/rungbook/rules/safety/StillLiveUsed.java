package rungbook.rules.safety;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.state.Sources;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * Work goes on although, on some path, this place or another one was found still live: after that answer the isolation
 * does not count as off, and a cable has two ends. Switching off another source, proving dead again and tagging out are
 * fine. A panel in front of what is live stays off, too: hands, sheet metal and screws would meet the live parts. The
 * switch that did not make it dead stays off: it has failed, or it is not the one.
 */
public final class StillLiveUsed extends StateRule {

  static final Code CLOSED_STILL_LIVE = Code.of("closed-still-live");
  static final Code RESTORED_STILL_LIVE = Code.of("restored-still-live");
  static final Code STILL_LIVE_USED = Code.of("still-live-used");

  private static final List<EquipmentCondition> WORK = List.of(EquipmentCondition.TOUCHED,
      EquipmentCondition.DISCHARGED, EquipmentCondition.BYPASSED, EquipmentCondition.OPEN);

  @Override
  public List<Code> codes() {
    return List.of(CLOSED_STILL_LIVE, RESTORED_STILL_LIVE, STILL_LIVE_USED);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().any(Fact.STILL_LIVE);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.MeterCheck check ? check.quantity().needsDeadCircuit() : !step.actions().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    if (step instanceof Step.MeterCheck check) {
      report(check.quantitySpan(), step, point, out);
      return;
    }
    for (Action action : step.actions()) {
      if ((WORK.stream().anyMatch(action.kind()::begins) && report(action.thing().span(), step, point, out))
          || closes(action, step, context, point, out) || switchesOn(action, step, context, point, out)) {
        return;
      }
      point.pass();
    }
  }

  private static boolean closes(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    FactTable facts = context.state().facts();
    int open = facts.of(Fact.OPEN, action.key());
    int live = open == FactTable.NONE || !action.kind().ends(EquipmentCondition.OPEN) || !point.may(open)
        ? FactTable.NONE : point.nextMay(Fact.STILL_LIVE, 0);
    while (live != FactTable.NONE && !Sources.mayBeBehind(action.key(), facts.words(live), context.tree().system())) {
      live = point.nextMay(Fact.STILL_LIVE, live + 1);
    }
    if (live != FactTable.NONE) {
      out.add(Problem.at(CLOSED_STILL_LIVE, step.source(), action.thing().span())
          .with("panel", action.thing().text()).shownBy(point.showHolding(live, "")));
    }
    return live != FactTable.NONE;
  }

  private static boolean switchesOn(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    FactTable facts = context.state().facts();
    int live = action.kind().ends(EquipmentCondition.ISOLATED) && facts.isSource(action.key())
        ? point.nextMay(Fact.STILL_LIVE, 0) : FactTable.NONE;
    while (live != FactTable.NONE && !context.tree().hazards().feeds(action.key(), facts.words(live))) {
      live = point.nextMay(Fact.STILL_LIVE, live + 1);
    }
    if (live != FactTable.NONE) {
      out.add(Problem.at(RESTORED_STILL_LIVE, step.source(), action.thing().span())
          .with("switch", action.thing().text()).with("place", placeName(facts.words(live), context))
          .shownBy(point.showHolding(live, "")));
    }
    return live != FactTable.NONE;
  }

  private static String placeName(String place, RuleContext context) {
    return place.isEmpty() ? "equipment"
        : context.tree().system().map(system -> system.locationName(place)).orElse(place);
  }

  /** The fact that the place of a step was found still live. */
  static int stillLive(Step step, FactTable facts) {
    return facts.of(Fact.STILL_LIVE, FactTable.place(step));
  }

  private static boolean report(Span span, Step step, PathFacts.ProgramPoint point, Problems out) {
    int live = point.nextMay(Fact.STILL_LIVE, 0);
    if (live == FactTable.NONE) {
      return false;
    }
    out.add(Problem.at(STILL_LIVE_USED, step.source(), span).shownBy(point.showHolding(live, "")));
    return true;
  }
}
