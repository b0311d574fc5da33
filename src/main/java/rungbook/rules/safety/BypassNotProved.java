package rungbook.rules.safety;

import java.util.List;
import java.util.stream.Stream;
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
import rungbook.system.Terminal;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * Hands go to an interlock with a line-voltage terminal that, on some path, has not been proved dead since power was
 * last on. A switch that is off may have opened the neutral only.
 */
public final class BypassNotProved extends StateRule {

  static final Code BYPASS_NOT_PROVED = Code.of("bypass-not-proved");

  @Override
  public List<Code> codes() {
    return List.of(BYPASS_NOT_PROVED);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.tree().circuit().isPresent() && context.state().facts().any(Fact.BYPASSED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(action -> action.kind().begins(EquipmentCondition.BYPASSED));
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      if (action.kind().begins(EquipmentCondition.BYPASSED)) {
        inspect(action, step, context, point, out);
      }
      point.pass();
    }
  }

  private static void inspect(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    FactTable facts = context.state().facts();
    lineTerminals(action.key(), context)
        .filter(terminal -> !point.must(proved(terminal, facts))).findFirst()
        .ifPresent(terminal -> out.add(Problem.at(BYPASS_NOT_PROVED, step.source(), action.thing().span())
            .with("interlock", action.thing().text())
            .with("point", context.tree().system().orElseThrow().pointName(terminal.point()))
            .shownBy(point.showLacking(proved(terminal, facts), ""))));
  }

  private static Stream<Terminal> lineTerminals(String interlock, RuleContext context) {
    return context.tree().circuits().orElseThrow().all().flatMap(system -> system.part(interlock).stream())
        .flatMap(part -> part.branches().stream())
        .flatMap(limb -> Stream.of(limb.a(), limb.b()))
        .distinct().filter(terminal -> Sources.isLineVoltage(context.tree().system(), terminal.point()));
  }

  private static int proved(Terminal terminal, FactTable facts) {
    return facts.of(Fact.PROVED_POINT, FactTable.pointKey(terminal.point(), terminal.place()));
  }
}
