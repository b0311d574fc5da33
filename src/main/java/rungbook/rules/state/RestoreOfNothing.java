package rungbook.rules.state;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.action.StateChange;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.system.remedy.Remedy;
import rungbook.system.remedy.RemedyFinder;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/**
 * Something is put back that, on every path, is in its place. What a finding names is found so, and may be put back: a
 * switch that is off, a door that is open.
 */
public final class RestoreOfNothing extends StateRule {

  static final Code RESTORE_OF_NOTHING = Code.of("restore-of-nothing");
  static final Code SELECTOR_RESTORED = Code.of("selector-restored");

  @Override
  public List<Code> codes() {
    return List.of(RESTORE_OF_NOTHING, SELECTOR_RESTORED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(RestoreOfNothing::putsBack);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      if (putsBack(action) && isKnown(action, step, context)) {
        inspect(action, step, context, point, out);
      }
      point.pass();
    }
  }

  private static boolean putsBack(Action action) {
    return action.changes().stream().anyMatch(StateChange.End.class::isInstance);
  }

  /** Whether it is clear what is put back. If not, its name or the place that is missing is the problem. */
  private static boolean isKnown(Action action, Step step, RuleContext context) {
    return context.tree().system().filter(system -> !action.kind().object().accepts(system, action.key())
        || (step.at().isEmpty() && PlaceMissing.isOneOfSeveral(action, system))).isEmpty();
  }

  private static void inspect(Action action, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    Optional<Vocabulary.Control> selector = selector(action.key(), context);
    if (selector.isPresent()) {
      out.add(problem(SELECTOR_RESTORED, action, step).with("position", selector.get().positions().get(0))
          .shownBy(point.showLacking(FactTable.NONE, "")));
    } else if (isInPlace(action, context.state().facts(), point)
        && (action.touches() || !isFoundSo(action.key(), step, context, point))) {
      out.add(problem(RESTORE_OF_NOTHING, action, step).shownBy(point.showLacking(FactTable.NONE, "")));
    }
  }

  private static Problem problem(Code code, Action action, Step step) {
    return Problem.at(code, step.source(), action.thing().span()).with("thing", action.thing().text());
  }

  /** A control with positions that is nothing else, so that it cannot come off or be switched off. */
  private static Optional<Vocabulary.Control> selector(String key, RuleContext context) {
    return context.tree().system().filter(system -> !system.parts().containsKey(key)
        && !system.points().containsKey(key) && system.panels().stream().map(Names::key).noneMatch(key::equals))
        .map(system -> system.controls().get(key)).filter(control -> !control.positions().isEmpty());
  }

  private static boolean isInPlace(Action action, FactTable facts, PathFacts.ProgramPoint point) {
    return action.changes().stream().noneMatch(
        change -> change instanceof StateChange.End end && point.may(facts.of(end.condition(), end.key())));
  }

  /** Whether a finding on some path names a fault in a thing. What it means is unknown without the system's parts. */
  private static boolean isFoundSo(String key, Step step, RuleContext context, PathFacts.ProgramPoint point) {
    List<Step.Finding> findings = findings(step, context, point);
    Optional<SystemVariants> circuits = context.tree().circuits().filter(known -> !known.base().parts().isEmpty());
    if (findings.isEmpty() || circuits.isEmpty()) {
      return !findings.isEmpty();
    }
    Map<String, Remedy> remedies = RemedyFinder.of(circuits.get());
    return findings.stream().flatMap(finding -> finding.faults().stream()).map(NameRef::key)
        .anyMatch(fault -> !remedies.containsKey(fault) || isAt(key, remedies.get(fault), circuits.get()));
  }

  /** The finding that a step is, and those that lead to it on some path. */
  private static List<Step.Finding> findings(Step step, RuleContext context, PathFacts.ProgramPoint point) {
    FactTable facts = context.state().facts();
    return context.tree().steps().stream().filter(Step.Finding.class::isInstance).map(Step.Finding.class::cast)
        .filter(finding -> finding.id().equals(step.id()) || point.may(facts.of(Fact.FOUND_AT, finding.id())))
        .toList();
  }

  /** Whether a fault is in a thing, or in a switch that the thing, a panel, opens. */
  private static boolean isAt(String key, Remedy remedy, SystemVariants circuits) {
    return remedy.isAt(key) || circuits.all().flatMap(system -> system.parts(Part.Switch.class))
        .filter(part -> part.opensWith().map(Names::key).filter(key::equals).isPresent())
        .anyMatch(part -> remedy.isAt(part.key()));
  }
}
