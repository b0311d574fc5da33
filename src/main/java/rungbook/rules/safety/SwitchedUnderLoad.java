package rungbook.rules.safety;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.JointRule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.Vocabulary.Control;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A pull-out is switched off or on while, on some path, a motor or heater that it feeds is called on. */
public final class SwitchedUnderLoad extends JointRule {

  static final Code SWITCHED_UNDER_LOAD = Code.of("switched-under-load");

  @Override
  public List<Code> codes() {
    return List.of(SWITCHED_UNDER_LOAD);
  }

  @Override
  protected boolean concerns(Action action, RuleContext context) {
    Control control = context.tree().circuit().orElseThrow().vocabulary().controls().get(action.key());
    return control != null && control.isPullOut()
        && (restores(action) || action.kind().begins(EquipmentCondition.ISOLATED));
  }

  @Override
  protected Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before) {
    int isolated = context.state().facts().of(Fact.ISOLATED, action.key());
    boolean isOff = isolated != FactTable.NONE && before.get(isolated);
    if (isOff && !restores(action)) {
      return Optional.empty();
    }
    return context.state().joint().settle(withSourceOn(action, context, before)).stream()
        .flatMap(settled -> settled.fedThrough(action.key()).stream()).findFirst()
        .map(load -> Problem.at(SWITCHED_UNDER_LOAD, step.source(), action.thing().span()).with("load", load)
            .with("switch", action.thing().text()));
  }

  private static boolean restores(Action action) {
    return action.kind().ends(EquipmentCondition.ISOLATED);
  }
}
