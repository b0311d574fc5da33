package rungbook.rules.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.state.Sources;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The points that are proved dead are too few: one point is no pair, and every line-voltage conductor of the place, its
 * neutral, and ground belong to the pairs.
 */
public final class ProveDeadPoints extends DeadProofRule {

  static final Code PROVE_DEAD_INCOMPLETE = Code.of("prove-dead-incomplete");
  static final Code PROVE_DEAD_ONE_POINT = Code.of("prove-dead-one-point");

  @Override
  public List<Code> codes() {
    return List.of(PROVE_DEAD_INCOMPLETE, PROVE_DEAD_ONE_POINT);
  }

  @Override
  protected void inspect(Action proof, Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    List<NameRef> named = step.actions().stream()
        .filter(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD)).map(Action::thing).toList();
    Set<String> keys = named.stream().map(NameRef::key).collect(Collectors.toSet());
    List<String> missing = missing(keys, FactTable.place(step), context.tree());
    if (keys.size() < 2 || !missing.isEmpty()) {
      Problem problem = Problem.at(keys.size() < 2 ? PROVE_DEAD_ONE_POINT : PROVE_DEAD_INCOMPLETE, step.source(),
          proof.thing().span()).with("missing", String.join("`, `", missing));
      out.add(problem.fixedBy(fix(step, named.get(named.size() - 1), missing))
          .shownBy(point.showLacking(FactTable.NONE, "")));
    }
  }

  /** A point of each conductor of which none is named, as the system writes it. */
  private static List<String> missing(Set<String> named, String place, Tree tree) {
    if (tree.system().isEmpty()) {
      return List.of();
    }
    Vocabulary system = tree.system().get();
    List<String> missing = new ArrayList<>();
    List<Set<String>> conductors = conductors(system, place, tree);
    for (Set<String> conductor : conductors) {
      if (conductor.stream().noneMatch(named::contains)) {
        missing.add(system.pointName(conductor.iterator().next()));
      }
    }
    Set<String> neutral = tree.hazards().neutralAt(place);
    if (!conductors.isEmpty() && !neutral.isEmpty() && neutral.stream().noneMatch(named::contains)) {
      missing.add(system.pointName(neutral.iterator().next()));
    }
    Vocabulary.Point ground = system.points().get(Terminal.GROUND);
    if (ground != null && ground.locations().contains(place) && !conductors.isEmpty()
        && !named.contains(Terminal.GROUND)) {
      missing.add(ground.name());
    }
    return missing;
  }

  /** By the wiring; where the system has none, each point is a conductor by itself. */
  private static List<Set<String>> conductors(Vocabulary system, String place, Tree tree) {
    return !tree.hazards().conductors().isEmpty() ? tree.hazards().conductorsAt(place)
        : system.points().entrySet().stream()
            .filter(point -> point.getValue().locations().contains(place) && Sources.isLineVoltage(point.getValue()))
            .filter(point -> !Sources.mayBeAheadOfAny(system, point.getKey()))
            .map(point -> Set.of(point.getKey())).toList();
  }

  private static Optional<Fix> fix(Step step, NameRef last, List<String> missing) {
    boolean plain = step.source().text(last.span()).equals(last.text());
    return missing.isEmpty() || !plain ? Optional.empty()
        : Optional.of(new Fix("add `" + String.join("`, `", missing) + "`",
            List.of(new Edit(step.source(), Span.at(last.span().end()), ", " + String.join(", ", missing)))));
  }
}
