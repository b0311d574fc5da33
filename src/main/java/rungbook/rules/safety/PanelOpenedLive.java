package rungbook.rules.safety;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.JointRule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.state.Sources;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Role;
import rungbook.system.ladder.SettledLadder;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A panel comes off while, on some path, line-voltage points behind it are live that a power switch could have made
 * dead. The terminals of a switch that is off do not count: its line side stays live.
 */
public final class PanelOpenedLive extends JointRule {

  static final Code PANEL_OPENED_LIVE = Code.of("panel-opened-live");

  @Override
  public List<Code> codes() {
    return List.of(PANEL_OPENED_LIVE);
  }

  @Override
  protected boolean concerns(Action action, RuleContext context) {
    return action.kind().begins(EquipmentCondition.OPEN);
  }

  @Override
  protected Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before) {
    if (before.get(context.state().facts().of(Fact.OPEN, action.key()))) {
      return Optional.empty();
    }
    return context.state().joint().settle(before).stream()
        .flatMap(settled -> inspect(action, step, context, before, settled).stream()).findFirst();
  }

  private static Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before,
      SettledLadder settled) {
    return behind(action.key(), context).filter(settled::isLive)
        .filter(point -> !isOfASwitchThatIsOff(point, context, before))
        .flatMap(point -> switchFor(point, settled, context).stream().map(source -> Problem
            .at(PANEL_OPENED_LIVE, step.source(), action.thing().span()).with("panel", action.thing().text())
            .with("source", source).with("point", context.tree().system().orElseThrow().pointName(point.point()))))
        .findFirst();
  }

  /** The line-voltage points behind a panel. */
  private static Stream<Terminal> behind(String panel, RuleContext context) {
    var system = context.tree().system().orElseThrow();
    return system.locations().entrySet().stream()
        .filter(place -> place.getValue().panel().map(Names::key).filter(panel::equals).isPresent())
        .map(Map.Entry::getKey)
        .flatMap(place -> system.points().entrySet().stream()
            .filter(point -> point.getValue().locations().contains(place)
                && Sources.isLineVoltage(context.tree().system(), point.getKey()))
            .map(point -> new Terminal(point.getKey(), place)));
  }

  private static boolean isOfASwitchThatIsOff(Terminal point, RuleContext context, BitSet before) {
    return context.tree().circuits().orElseThrow().all().flatMap(system -> system.parts(Part.Switch.class))
        .filter(part -> part.branches().stream().anyMatch(limb -> limb.a().equals(point) || limb.b().equals(point)))
        .map(part -> context.state().facts().of(Fact.ISOLATED, part.key()))
        .anyMatch(isolated -> isolated != FactTable.NONE && before.get(isolated));
  }

  /** A power switch that would make a live point dead, one at the same place first. */
  private static Optional<String> switchFor(Terminal point, SettledLadder settled, RuleContext context) {
    return context.tree().system().orElseThrow().controls().entrySet().stream()
        .filter(control -> control.getValue().role() == Role.ISOLATOR
            && !settled.isLiveWithout(control.getKey(), point))
        .map(Map.Entry::getValue)
        .min(Comparator.comparing((Control control) -> !control.locations().contains(point.place())))
        .map(Control::name);
  }
}
