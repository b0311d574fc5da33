package rungbook.rules.safety;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.JointRule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Role;
import rungbook.system.logic.SettledContacts;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A panel comes off or goes on while, on some path, line-voltage points behind it are live that a power switch could
 * have made dead. The terminals of a switch that is off do not count: its line side stays live.
 */
public final class PanelOpenedLive extends JointRule {

  static final Code PANEL_CLOSED_LIVE = Code.of("panel-closed-live");
  static final Code PANEL_OPENED_LIVE = Code.of("panel-opened-live");

  @Override
  public List<Code> codes() {
    return List.of(PANEL_CLOSED_LIVE, PANEL_OPENED_LIVE);
  }

  @Override
  protected boolean concerns(Action action, RuleContext context) {
    boolean closes = action.kind().ends(EquipmentCondition.OPEN)
        && context.state().facts().of(Fact.OPEN, action.key()) != FactTable.NONE;
    return closes || opens(action);
  }

  @Override
  protected Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before) {
    if (before.get(context.state().facts().of(Fact.OPEN, action.key())) == opens(action)) {
      return Optional.empty();
    }
    return context.state().joint().settle(before).stream()
        .flatMap(settled -> inspect(action, step, context, before, settled).stream()).findFirst();
  }

  private static Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before,
      SettledContacts settled) {
    return OpenUnit.live(action.key(), context, before, settled)
        .flatMap(point -> switchFor(point, settled, context).stream().map(source -> Problem
            .at(opens(action) ? PANEL_OPENED_LIVE : PANEL_CLOSED_LIVE, step.source(), action.thing().span())
            .with("panel", action.thing().text())
            .with("source", source).with("point", context.tree().system().orElseThrow().pointName(point.point()))))
        .findFirst();
  }

  private static boolean opens(Action action) {
    return action.kind().begins(EquipmentCondition.OPEN);
  }

  /** A power switch that would make a live point dead, one at the same place first. */
  private static Optional<String> switchFor(Terminal point, SettledContacts settled, RuleContext context) {
    return context.tree().system().orElseThrow().controls().entrySet().stream()
        .filter(control -> control.getValue().role() == Role.ISOLATOR
            && !settled.isLiveWithout(control.getKey(), point))
        .map(Map.Entry::getValue)
        .min(Comparator.comparing((Control control) -> !control.locations().contains(point.place())))
        .map(Control::name);
  }
}
