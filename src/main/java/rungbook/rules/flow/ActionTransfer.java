package rungbook.rules.flow;

import java.util.Arrays;
import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.system.Quantity;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * The effect of each step's actions on the facts, compiled to a short program, so names are looked up once. An action
 * is a number; the actions of a step are consecutive. What a check or a finding does by itself counts with its first
 * action.
 */
final class ActionTransfer {

  private static final int SET = 0;
  private static final int CLEAR = 1;
  private static final int CLEAR_ROW = 2;

  private final FactTable facts;
  private final int[] firstAction;
  private int[] firstCode = new int[16];
  private int[] code = new int[32];
  private int actions;
  private int codes;

  private ActionTransfer(FactTable facts, int steps) {
    this.facts = facts;
    this.firstAction = new int[steps + 1];
  }

  static ActionTransfer of(List<Step> steps, FactTable facts) {
    ActionTransfer program = new ActionTransfer(facts, steps.size());
    for (int step = 0; step < steps.size(); step++) {
      program.add(steps.get(step));
      program.firstAction[step + 1] = program.actions;
    }
    return program;
  }

  int count(int step) {
    return firstAction[step + 1] - firstAction[step];
  }

  /**
   * Applies a step's actions from {@code from} (included) to {@code to} (not included), counted from its first action.
   */
  void apply(int step, int from, int to, FactDelta delta) {
    int end = firstCode[firstAction[step] + to];
    for (int i = firstCode[firstAction[step] + from]; i < end; i++) {
      int fact = code[i] >> 2;
      switch (code[i] & 3) {
        case SET -> delta.set(fact);
        case CLEAR -> delta.clear(fact);
        default -> delta.clear(fact, code[++i]);
      }
    }
  }

  private void add(Step step) {
    int before = codes;
    if (step instanceof Step.Check check) {
      check(check);
    } else if (facts.repairs().isFinding(step)) {
      find(step);
    }
    if (codes > before && step.actions().isEmpty()) {
      endAction();
    }
    for (Action action : step.actions()) {
      action.changes().forEach(this::add);
      if (action.kind().begins(EquipmentCondition.PROVED_DEAD)) {
        set(facts.of(Fact.PROVED_POINT, FactTable.pointKey(action.key(), FactTable.place(step))));
      }
      endAction();
    }
  }

  /** An ohmmeter also looks for the short that opened a fuse. */
  private void check(Step.Check check) {
    if (check instanceof Step.MeterCheck meter && meter.quantity() == Quantity.OHMS) {
      clear(Fact.FUSE_REPLACED);
    }
    if (facts.repairs().any()) {
      clear(Fact.UNCHECKED);
    }
  }

  private void find(Step finding) {
    set(facts.of(Fact.FOUND));
    set(facts.of(Fact.UNCHECKED));
    set(facts.of(Fact.FOUND_AT, finding.id()));
    set(facts.of(Fact.FAULT_LEFT, finding.id()));
    clear(Fact.REPAIRED);
  }

  private void add(StateChange change) {
    if (change instanceof StateChange.SetPosition set) {
      setPosition(set);
    } else if (change instanceof StateChange.Begin begin) {
      begin(begin.condition(), begin.key());
    } else if (change instanceof StateChange.End end) {
      end(end.condition(), end.key());
    }
  }

  private void setPosition(StateChange.SetPosition change) {
    int first = facts.firstPosition(change.control());
    if (first != FactTable.NONE) {
      clearRow(first, first + facts.positions(change.control()));
      set(facts.at(change.control(), change.position()));
      set(facts.of(Fact.SET, change.control()));
    }
  }

  private void begin(EquipmentCondition condition, String key) {
    set(facts.of(condition, key));
    switch (condition) {
      case ISOLATED -> {
        set(facts.of(Fact.OFF_UNTAGGED, key));
        clear(facts.of(Fact.TRIED, key));
        set(facts.of(Fact.POWER_OFF));
      }
      case TAGGED_OUT -> clear(facts.of(Fact.OFF_UNTAGGED, key));
      case DISCONNECTED -> clear(Fact.FUSE_REPLACED);
      case DISCHARGED -> set(facts.of(Fact.DISCHARGED_ANY));
      case PROVED_DEAD -> {
        set(facts.of(Fact.PROVED_ANYWHERE));
        clear(facts.of(Fact.STILL_LIVE, key));
      }
      case TOUCHED -> {
        clear(facts.of(Fact.STILL_LIVE, key));
        set(facts.of(Fact.POWER_OFF));
        set(facts.of(Fact.PROVED_ANYWHERE));
      }
      case REPAIRED -> {
        set(facts.of(Fact.UNCHECKED));
        facts.repairs().at(key).forEach(finding -> clear(facts.of(Fact.FAULT_LEFT, finding)));
      }
      case OPEN, BYPASSED, TRIED, REPLACED, RESET, METER_PROVED -> {}
    }
  }

  private void end(EquipmentCondition condition, String key) {
    clear(facts.of(condition, key));
    if (condition == EquipmentCondition.ISOLATED) {
      facts.repairs().foundOff(key).forEach(this::switchOn);
      clear(facts.of(Fact.OFF_UNTAGGED, key));
      set(facts.of(Fact.TRIED, key));
      if (facts.isSource(key)) {
        clearRow(facts.first(Fact.POWER_OFF), facts.end(Fact.DISCHARGED));
      }
    }
  }

  private void switchOn(String finding) {
    set(facts.of(Fact.REPAIRED));
    clear(facts.of(Fact.FAULT_LEFT, finding));
  }

  private void clear(Fact kind) {
    clearRow(facts.first(kind), facts.end(kind));
  }

  private void set(int fact) {
    if (fact != FactTable.NONE) {
      put(fact << 2 | SET);
    }
  }

  private void clear(int fact) {
    if (fact != FactTable.NONE) {
      put(fact << 2 | CLEAR);
    }
  }

  private void clearRow(int from, int to) {
    if (from < to) {
      put(from << 2 | CLEAR_ROW);
      put(to);
    }
  }

  private void put(int word) {
    code = codes == code.length ? Arrays.copyOf(code, 2 * codes) : code;
    code[codes++] = word;
  }

  private void endAction() {
    actions++;
    firstCode = actions == firstCode.length ? Arrays.copyOf(firstCode, 2 * actions) : firstCode;
    firstCode[actions] = codes;
  }
}
