package rungbook.rules.safety;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rungbook.action.ActionKind;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.state.PanelClosed;
import rungbook.rules.state.Sources;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.WorkKind;

/** The kinds of work in a step that not everybody may do, each at the first place that shows it. */
final class RestrictedWork {

  private static final String GAS_VALVE = "gas valve";

  private final Step step;
  private final Tree tree;
  private final FactTable facts;
  private final PathFacts.ProgramPoint point;
  private final Map<WorkKind, Shown> found = new EnumMap<>(WorkKind.class);

  private RestrictedWork(Step step, RuleContext context, PathFacts.ProgramPoint point) {
    this.step = step;
    this.tree = context.tree();
    this.facts = context.state().facts();
    this.point = point;
  }

  /** @param witness for work that is not proved dead, a path on which it is not */
  record Shown(Span span, Optional<Witness> witness) {}

  /** @param point the state before the step's first action; it moves past all of them */
  static Map<WorkKind, Shown> of(Step step, RuleContext context, PathFacts.ProgramPoint point) {
    RestrictedWork work = new RestrictedWork(step, context, point);
    work.look();
    return work.found;
  }

  private void look() {
    if (step instanceof Step.MeterCheck && !isDead()) {
      LineVoltage.met(step, tree).ifPresent(this::live);
    }
    caution("refrigerant").ifPresent(warned -> add(WorkKind.REFRIGERANT, warned));
    for (Action action : step.actions()) {
      look(action);
      point.pass();
    }
  }

  private void look(Action action) {
    if (isLive(action)) {
      live(action.thing().span());
    }
    if (PanelClosed.reachesIn(action, facts)) {
      caution("gas").ifPresent(warned -> add(WorkKind.GAS_VALVES, warned));
    }
    if (action.touches() && (action.key().equals(GAS_VALVE) || action.key().endsWith(" " + GAS_VALVE))) {
      add(WorkKind.GAS_VALVES, action.thing().span());
    }
    if (action.touches() && tree.system().filter(known -> BranchCircuit.has(known, action.key())).isPresent()) {
      add(WorkKind.BRANCH_CIRCUITS, action.thing().span());
    }
  }

  /**
   * Whether hands may meet 50 V or more: a point is only now being proved dead, a capacitor is charged, or something is
   * done behind the panel of a place with line voltage that is not proved dead. To put things back, power off is
   * enough.
   */
  private boolean isLive(Action action) {
    ActionKind kind = action.kind();
    if (kind.begins(EquipmentCondition.PROVED_DEAD)) {
      return Sources.isLineVoltage(tree.system(), action.key());
    }
    boolean putsBack = action.changes().stream().allMatch(StateChange.End.class::isInstance);
    return kind.begins(EquipmentCondition.DISCHARGED)
        || (hasLineVoltage() && PanelClosed.reachesIn(action, facts) && !(putsBack ? point.isPowerOff() : isDead()));
  }

  private boolean hasLineVoltage() {
    return tree.system().filter(known -> Sources.hasLineVoltage(known, FactTable.place(step))).isPresent();
  }

  private boolean isDead() {
    return point.isPowerOff() && point.must(DeadWork.proved(step, tree, facts));
  }

  private void live(Span span) {
    if (!found.containsKey(WorkKind.LIVE_WORK)) {
      int lacking = point.isPowerOff() ? DeadWork.proved(step, tree, facts) : facts.of(Fact.POWER_OFF);
      found.put(WorkKind.LIVE_WORK,
          new Shown(span, isDead() ? Optional.empty() : point.showLacking(lacking, "")));
    }
  }

  private void add(WorkKind kind, Span span) {
    found.putIfAbsent(kind, new Shown(span, Optional.empty()));
  }

  private Optional<Span> caution(String key) {
    return step.header().cautions().stream().filter(caution -> caution.key().equals(key)).findFirst()
        .map(NameRef::span);
  }
}
