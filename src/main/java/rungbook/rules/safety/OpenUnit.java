package rungbook.rules.safety;

import java.util.BitSet;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.rules.state.Sources;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary.Location;
import rungbook.system.logic.SettledContacts;
import rungbook.tree.Step;

/** What is live behind a panel. The terminals of a switch that is off do not count: its line side stays live. */
public final class OpenUnit {

  private OpenUnit() {}

  /** The line-voltage points behind a panel that are live in a state. */
  public static Stream<Terminal> live(String panel, RuleContext context, BitSet state, SettledContacts settled) {
    return behind(panel, context).filter(settled::isLive).filter(point -> !isOfASwitchThatIsOff(point, context, state));
  }

  /**
   * How a step is reached so that, before, during or after its actions, its place has an open panel and something live
   * behind it; empty if no path does that, or if the system has no parts.
   */
  public static Optional<JointStates.Arrival> liveAt(int number, RuleContext context) {
    Step step = context.state().step(number);
    Optional<String> panel = context.tree().system()
        .map(system -> system.locations().get(FactTable.place(step))).flatMap(Location::panel).map(Names::key);
    int open = panel.map(known -> context.state().facts().of(Fact.OPEN, known)).orElse(FactTable.NONE);
    return open == FactTable.NONE || context.tree().circuits().isEmpty() ? Optional.empty()
        : context.state().joint().at(number).stream()
            .filter(arrival -> during(arrival, step).anyMatch(state -> state.get(open)
                && context.state().joint().settle(state).stream()
                    .flatMap(settled -> live(panel.get(), context, state, settled)).findAny().isPresent()))
            .findFirst();
  }

  private static Stream<BitSet> during(JointStates.Arrival arrival, Step step) {
    return Stream.iterate(0, done -> done <= step.actions().size(), done -> done + 1).map(arrival::after);
  }

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

  private static boolean isOfASwitchThatIsOff(Terminal point, RuleContext context, BitSet state) {
    return context.tree().circuits().orElseThrow().all().flatMap(system -> system.parts(Part.Switch.class))
        .filter(part -> part.branches().stream().anyMatch(limb -> limb.a().equals(point) || limb.b().equals(point)))
        .map(part -> context.state().facts().of(Fact.ISOLATED, part.key()))
        .anyMatch(isolated -> isolated != FactTable.NONE && state.get(isolated));
  }
}
