package rungbook.pack.path;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.tree.Action;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The state of the equipment at each step, by the same analysis of the paths that the rules use. */
public final class StepStates {

  private final PathFacts paths;
  private final StateWords words;

  public StepStates(Tree tree, PathFacts paths) {
    this.paths = paths;
    this.words = new StateWords(tree.system());
  }

  /** As a step begins; nothing is known of a tree that is too large to analyze. */
  public StepState at(int step) {
    var certain = new ArrayList<String>();
    var possible = new ArrayList<String>();
    if (!paths.isTooLarge()) {
      PathFacts.ProgramPoint point = paths.point();
      point.enter(step);
      each(point, Fact.BYPASSED, begun(EquipmentCondition.BYPASSED), certain, possible);
      each(point, Fact.OPEN, begun(EquipmentCondition.OPEN), certain, possible);
      each(point, Fact.ISOLATED, begun(EquipmentCondition.ISOLATED), certain, possible);
      each(point, Fact.DISCONNECTED, begun(EquipmentCondition.DISCONNECTED), certain, possible);
      each(point, Fact.AT, this::setting, certain, possible);
    }
    return new StepState(certain, possible);
  }

  /** A setting that a check presumes; empty for a stage, which comes by itself. */
  public Optional<String> set(Setting setting) {
    return words.set(setting.control(), setting.position());
  }

  private IntFunction<Optional<String>> begun(EquipmentCondition condition) {
    return fact -> words.begun(condition, paths.facts().words(fact));
  }

  private static void each(PathFacts.ProgramPoint point, Fact kind, IntFunction<Optional<String>> words,
      List<String> certain, List<String> possible) {
    for (int fact = point.nextMay(kind, 0); fact != FactTable.NONE; fact = point.nextMay(kind, fact + 1)) {
      List<String> state = point.must(fact) ? certain : possible;
      words.apply(fact).ifPresent(state::add);
    }
  }

  /** A control at its first position is as everybody expects it. */
  private Optional<String> setting(int fact) {
    var found = new ArrayList<String>();
    if (!paths.facts().isStart(fact)) {
      BitSet one = new BitSet();
      one.set(fact);
      paths.facts().eachPosition(one, (control, position) -> words.set(control, position).ifPresent(found::add));
    }
    return found.stream().findFirst();
  }

  /** What a step leaves changed; of two changes of one thing the last. */
  public List<String> after(Step step) {
    Map<String, String> changed = new LinkedHashMap<>();
    for (Action action : step.actions()) {
      for (StateChange change : action.changes()) {
        if (change instanceof StateChange.SetPosition set) {
          words.set(set.control(), set.position()).ifPresent(state -> changed.put(set.control(), state));
        } else if (change instanceof StateChange.Begin begin) {
          words.begun(begin.condition(), begin.key()).ifPresent(state -> changed.put(begin.key(), state));
        } else if (change instanceof StateChange.End end) {
          restored(action, end).ifPresent(state -> changed.put(end.key(), state));
        }
      }
    }
    return List.copyOf(changed.values());
  }

  /** To restore a thing ends whatever it may have been; a panel is never off by a switch. */
  private Optional<String> restored(Action action, StateChange.End end) {
    boolean isKnown = paths.facts().of(end.condition(), end.key()) != FactTable.NONE
        && (end.key().equals(action.key()) || end.key().startsWith(action.key() + " at "));
    return isKnown ? words.ended(end.condition(), end.key()) : Optional.empty();
  }

  /**
   * What a step changes that somebody has to put right, for a list of what is still open: {@code +blower door off} is
   * put on the list, {@code -blower door off} takes what begins so from it.
   */
  public List<String> lasting(Step step) {
    var lasting = new LinkedHashSet<String>();
    for (Action action : step.actions()) {
      for (StateChange change : action.changes()) {
        if (change instanceof StateChange.SetPosition set) {
          words.anyPosition(set.control()).ifPresent(any -> lasting.add('-' + any));
          words.left(set.control(), set.position()).ifPresent(state -> lasting.add('+' + state));
        } else if (change instanceof StateChange.Begin begin) {
          words.begun(begin.condition(), begin.key()).ifPresent(state -> lasting.add('+' + state));
        } else if (change instanceof StateChange.End end) {
          words.begun(end.condition(), end.key()).ifPresent(state -> lasting.add('-' + state));
        }
      }
    }
    return List.copyOf(lasting);
  }
}
