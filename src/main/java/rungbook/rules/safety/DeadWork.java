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
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A part is touched before the power is isolated, before it is proved dead, or before its charge is gone; reports the
 * first of these that is missing on some path. Switching power on cancels all three.
 */
public final class DeadWork extends StateRule {

  static final Code CAPACITOR_CHARGED = Code.of("capacitor-charged");
  static final Code NOT_PROVED_DEAD = Code.of("not-proved-dead");
  static final Code TOUCHED_LIVE = Code.of("touched-live");

  @Override
  public List<Code> codes() {
    return List.of(CAPACITOR_CHARGED, NOT_PROVED_DEAD, TOUCHED_LIVE);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return !step.actions().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      inspect(action, step, context, point, out);
      point.pass();
    }
  }

  private static void inspect(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    if (!action.touches() && !action.kind().begins(EquipmentCondition.DISCHARGED)) {
      return;
    }
    FactTable facts = context.state().facts();
    String key = action.key();
    int proved = proved(step, context.tree(), facts);
    if (!point.isPowerOff()) {
      report(TOUCHED_LIVE, action, step, facts.of(Fact.POWER_OFF), point, out);
    } else if (point.may(StillLiveUsed.stillLive(step, facts))) {
      return; // the other rule reports it
    } else if (action.touches() && !point.must(proved)) {
      report(NOT_PROVED_DEAD, action, step, proved, point, out);
    } else if (action.touches() && facts.holdsCharge(key) && !isDischarged(key, facts, point)) {
      report(CAPACITOR_CHARGED, action, step, facts.of(Fact.DISCHARGED, key), point, out);
    }
  }

  private static boolean isDischarged(String key, FactTable facts, PathFacts.ProgramPoint point) {
    return facts.sharingCharge(key).stream().anyMatch(name -> point.must(facts.of(Fact.DISCHARGED, name)));
  }

  /** At a place with line voltage, that place must be proved dead; elsewhere, any place will do. */
  static int proved(Step step, Tree tree, FactTable facts) {
    boolean here = tree.system().isPresent() && Sources.hasLineVoltage(tree.system().get(), FactTable.place(step));
    return here ? facts.of(Fact.PROVED_AT, FactTable.place(step)) : facts.of(Fact.PROVED_ANYWHERE);
  }

  private static void report(Code code, Action action, Step step, int lacking, PathFacts.ProgramPoint point,
      Problems out) {
    Problem problem = Problem.at(code, step.source(), action.thing().span()).with("thing", action.thing().text());
    out.add(problem.shownBy(point.showLacking(lacking, "")));
  }
}
