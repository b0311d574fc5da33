package rungbook.rules.state;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A power source is switched on while, on some path, something at line voltage that it feeds is still disconnected: a
 * bare end becomes live. It needs the parts of the system.
 */
public final class RestoredDisconnected extends StateRule {

  static final Code RESTORED_DISCONNECTED = Code.of("restored-disconnected");

  @Override
  public List<Code> codes() {
    return List.of(RESTORED_DISCONNECTED);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.tree().circuits().isPresent() && context.state().facts().any(Fact.DISCONNECTED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(action -> switchesOn(action, context));
  }

  private static boolean switchesOn(Action action, RuleContext context) {
    return action.kind().ends(EquipmentCondition.ISOLATED) && context.state().facts().isSource(action.key());
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      if (switchesOn(action, context)) {
        inspect(action, step, context, point).ifPresent(out::add);
      }
      point.pass();
    }
  }

  private static Optional<Problem> inspect(Action action, Step step, RuleContext context,
      PathFacts.ProgramPoint point) {
    FactTable facts = context.state().facts();
    int loose = point.nextMay(Fact.DISCONNECTED, 0);
    while (loose != FactTable.NONE && !isFed(facts.words(loose), action.key(), context)) {
      loose = point.nextMay(Fact.DISCONNECTED, loose + 1);
    }
    return loose == FactTable.NONE ? Optional.empty()
        : Optional.of(Problem.at(RESTORED_DISCONNECTED, step.source(), action.thing().span())
            .with("switch", action.thing().text()).with("thing", facts.words(loose))
            .shownBy(point.showHolding(loose, "")));
  }

  /** Whether a source feeds line voltage to a place where what is loose ends at line voltage. */
  private static boolean isFed(String loose, String source, RuleContext context) {
    return ends(loose, context.tree().circuits().orElseThrow())
        .filter(end -> Sources.isLineVoltage(context.tree().system(), end.point()))
        .anyMatch(end -> context.tree().hazards().feeds(source, end.place()));
  }

  /** The ends of a part, of the parts of an assembly, or a terminal with its place. */
  private static Stream<Terminal> ends(String loose, SystemVariants systems) {
    var words = systems.base().vocabulary();
    Set<String> members = words.assemblies().getOrDefault(loose, Set.of());
    Stream<Terminal> parts = systems.all().flatMap(system -> Stream.concat(Stream.of(loose), members.stream())
        .flatMap(name -> system.part(name).stream()).flatMap(part -> part.branches().stream())
        .flatMap(limb -> Stream.of(limb.a(), limb.b())));
    return Stream.concat(parts, words.points().entrySet().stream().flatMap(point -> point.getValue().locations()
        .stream().map(place -> new Terminal(point.getKey(), place)))
        .filter(terminal -> loose.equals(terminal.point() + " at " + terminal.place())));
  }
}
