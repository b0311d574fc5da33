package rungbook.rules.safety;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A cable is repaired or replaced while, on some path, its other end is not proved dead: that end is behind a panel,
 * among line voltage, and the work needs both ends.
 */
public final class CableEndLive extends StateRule {

  static final Code CABLE_END_LIVE = Code.of("cable-end-live");

  @Override
  public List<Code> codes() {
    return List.of(CABLE_END_LIVE);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.tree().circuit().isPresent();
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(CableEndLive::repairs);
  }

  private static boolean repairs(Action action) {
    return action.kind().begins(EquipmentCondition.REPAIRED);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      if (repairs(action) && point.isPowerOff()) { // another rule reports a part that is touched with the power on
        inspect(action, step, context, point, out);
      }
      point.pass();
    }
  }

  private static void inspect(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    for (String place : ends(action.key(), context.tree().circuit().orElseThrow())) {
      int proved = context.state().facts().of(Fact.PROVED_AT, place);
      if (!place.equals(FactTable.place(step)) && isBehindPanelWithLineVoltage(place, context) && !point.must(proved)) {
        out.add(Problem.at(CABLE_END_LIVE, step.source(), action.thing().span()).with("thing", action.thing().text())
            .with("place", Objects.requireNonNull(context.tree().system().orElseThrow().locations().get(place)).name())
            .shownBy(point.showLacking(proved, "")));
        return;
      }
    }
  }

  private static boolean isBehindPanelWithLineVoltage(String place, RuleContext context) {
    Vocabulary system = context.tree().system().orElseThrow();
    Vocabulary.Location location = system.locations().get(place);
    return location != null && location.panel().isPresent() && Sources.hasLineVoltage(system, place);
  }

  /** The places of the ends of a cable, of one conductor, or of an assembly that has a cable. */
  private static Set<String> ends(String key, ControlSystem system) {
    Set<String> members = system.vocabulary().assemblies().getOrDefault(key, Set.of());
    Set<String> places = new LinkedHashSet<>();
    Stream.concat(Stream.of(key), members.stream()).flatMap(name -> cable(name, system).stream())
        .flatMap(cable -> cable.branches().stream()).forEach(conductor -> addEnds(conductor, places));
    return places;
  }

  private static Optional<Part> cable(String key, ControlSystem system) {
    return system.part(key).or(() -> system.partOfBranch(key)).filter(Part.Cable.class::isInstance);
  }

  private static void addEnds(PartBranch conductor, Set<String> places) {
    places.add(conductor.a().place());
    places.add(conductor.b().place());
  }
}
