package rungbook.rules.safety;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.rules.state.Sources;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Location;
import rungbook.system.logic.SettledContacts;
import rungbook.tree.Step;

/**
 * What is live behind the panels of a tree's system. The terminals of a switch that is off do not count: its line side
 * stays live.
 */
public final class OpenUnit {

  private static final Function<SystemVariants, Map<Terminal, Set<String>>> SWITCHES = OpenUnit::switches;
  private static final Function<SystemVariants, Map<String, List<Terminal>>> BEHIND = OpenUnit::behind;

  private final RuleContext context;
  private final Map<String, Map<BitSet, Boolean>> live = new HashMap<>();

  public OpenUnit(RuleContext context) {
    this.context = context;
  }

  /** The line-voltage points behind a panel that are live in a state. */
  public static Stream<Terminal> live(String panel, RuleContext context, BitSet state, SettledContacts settled) {
    return behind(panel, context).stream().filter(settled::isLive)
        .filter(point -> !isOfASwitchThatIsOff(point, context, state));
  }

  /** Whether points of 50 V or more are behind a panel. */
  public static boolean hasLineVoltage(String panel, RuleContext context) {
    return context.tree().circuits().isPresent() && !behind(panel, context).isEmpty();
  }

  /**
   * How a step is reached so that, before, during or after its actions, its place has an open panel and something live
   * behind it; empty if no path does that, or if the system has no parts.
   */
  public Optional<JointStates.Arrival> liveAt(int number) {
    Step step = context.state().step(number);
    Optional<String> panel = panel(step, context);
    int open = panel.map(known -> context.state().facts().of(Fact.OPEN, known)).orElse(FactTable.NONE);
    if (open == FactTable.NONE || context.tree().circuits().isEmpty()) {
      return Optional.empty();
    }
    return context.state().joint().at(number).stream()
        .filter(arrival -> during(arrival, step).anyMatch(state -> state.get(open) && isLive(panel.get(), state)))
        .findFirst();
  }

  /** Many steps are reached in the same state. */
  private boolean isLive(String panel, BitSet state) {
    return live.computeIfAbsent(panel, any -> new HashMap<>())
        .computeIfAbsent(state, any -> context.state().joint().settle(any).stream()
            .anyMatch(settled -> live(panel, context, any, settled).findAny().isPresent()));
  }

  /** The key of the panel that must be open for work at a step's place. */
  public static Optional<String> panel(Step step, RuleContext context) {
    return context.tree().system().map(system -> system.locations().get(FactTable.place(step)))
        .flatMap(Location::panel).map(Names::key);
  }

  private static Stream<BitSet> during(JointStates.Arrival arrival, Step step) {
    return Stream.iterate(0, done -> done <= step.actions().size(), done -> done + 1).map(arrival::after);
  }

  private static List<Terminal> behind(String panel, RuleContext context) {
    return context.tree().circuits().orElseThrow().once(BEHIND).getOrDefault(panel, List.of());
  }

  /** The points at line voltage, by the panel that they are behind. */
  private static Map<String, List<Terminal>> behind(SystemVariants systems) {
    Vocabulary words = systems.base().vocabulary();
    Map<String, List<Terminal>> behind = new HashMap<>();
    words.locations().forEach((place, location) -> location.panel().map(Names::key)
        .ifPresent(panel -> words.points().forEach((point, known) -> {
          if (known.locations().contains(place) && Sources.isLineVoltage(known)) {
            behind.computeIfAbsent(panel, any -> new ArrayList<>()).add(new Terminal(point, place));
          }
        })));
    return behind;
  }

  private static boolean isOfASwitchThatIsOff(Terminal point, RuleContext context, BitSet state) {
    return context.tree().circuits().orElseThrow().once(SWITCHES).getOrDefault(point, Set.of()).stream()
        .map(key -> context.state().facts().of(Fact.ISOLATED, key))
        .anyMatch(isolated -> isolated != FactTable.NONE && state.get(isolated));
  }

  /** The keys of the switches of any variant that end at a point. */
  private static Map<Terminal, Set<String>> switches(SystemVariants systems) {
    Map<Terminal, Set<String>> switches = new HashMap<>();
    systems.all().flatMap(system -> system.parts(Part.Switch.class)).forEach(part -> part.branches()
        .forEach(limb -> Stream.of(limb.a(), limb.b())
            .forEach(end -> switches.computeIfAbsent(end, any -> new HashSet<>(2)).add(part.key()))));
    return switches;
  }
}
