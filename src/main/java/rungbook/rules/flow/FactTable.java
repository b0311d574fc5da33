package rungbook.rules.flow;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import rungbook.action.EquipmentCondition;
import rungbook.action.ObjectNames;
import rungbook.action.StateChange;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * Numbers the facts that a tree mentions, from 0. A tree with and without a system is numbered in the same way: a name
 * is a power source if some action isolates it, and a switch if some action bypasses it. The facts of one kind are
 * consecutive, and so are the positions of one control.
 */
public final class FactTable {

  /** No fact: no action in the tree makes it true. */
  public static final int NONE = -1;

  private final Optional<Vocabulary> system;
  private final List<Map<String, Integer>> places = new ArrayList<>();
  private final Map<String, Map<String, Integer>> positions = new LinkedHashMap<>();
  private final int[] first = new int[Fact.ALL.length + 1];
  private final List<String> words = new ArrayList<>();
  private final Repairs repairs;
  private final Map<String, Integer> firstPosition = new HashMap<>();

  private FactTable(Optional<Vocabulary> system, Repairs repairs) {
    this.system = system;
    this.repairs = repairs;
    for (Fact fact : Fact.ALL) {
      places.add(fact.isNameless() ? Map.of("", 0) : new LinkedHashMap<>());
    }
  }

  static FactTable of(Tree tree) {
    FactTable facts = new FactTable(tree.system(), Repairs.of(tree));
    for (Step step : tree.steps()) {
      facts.gather(step);
    }
    facts.number();
    return facts;
  }

  public int count() {
    return first[first.length - 1];
  }

  /** The first fact of a kind. */
  int first(Fact kind) {
    return first[kind.ordinal()];
  }

  /** Whether a fact is of a kind. */
  public boolean isOf(Fact kind, int fact) {
    return first(kind) <= fact && fact < end(kind);
  }

  int end(Fact kind) {
    return first[kind.ordinal() + 1];
  }

  /** Whether the tree has any fact of a kind. */
  public boolean any(Fact kind) {
    return first(kind) < end(kind);
  }

  /** The findings that lead on to a repair. */
  public Repairs repairs() {
    return repairs;
  }

  /** A fact about the whole equipment. */
  public int of(Fact kind) {
    return first(kind);
  }

  /** The fact about a named object, by its lookup key; {@link #NONE} if no task makes it true. */
  public int of(Fact kind, String key) {
    Integer place = places.get(kind.ordinal()).get(key);
    return place == null ? NONE : first(kind) + place;
  }

  public int at(Setting setting) {
    return at(setting.control(), setting.position());
  }

  int at(String control, String position) {
    Map<String, Integer> known = positions.get(control);
    Integer place = known == null ? null : known.get(position);
    return place == null ? NONE : firstPosition(control) + place;
  }

  /** Calls {@code take} with the control and the position of each fact that is about one. */
  public void eachPosition(BitSet holding, BiConsumer<String, String> take) {
    positions.forEach((control, known) -> known.keySet().stream()
        .filter(position -> holding.get(at(control, position))).forEach(position -> take.accept(control, position)));
  }

  /** The fact that a condition holds for an object; {@link #NONE} if no task begins it or no rule uses it. */
  public int of(EquipmentCondition condition, String key) {
    return switch (condition) {
      case OPEN -> of(Fact.OPEN, key);
      case BYPASSED -> of(Fact.BYPASSED, key);
      case ISOLATED -> of(Fact.ISOLATED, key);
      case TRIED -> of(Fact.TRIED, key);
      case TAGGED_OUT -> of(Fact.TAGGED_OUT);
      case DISCONNECTED -> of(Fact.DISCONNECTED, key);
      case REPLACED -> of(Fact.FUSE_REPLACED, key);
      case DISCHARGED -> of(Fact.DISCHARGED, key);
      case PROVED_DEAD, TOUCHED -> of(Fact.PROVED_AT, key);
      case REPAIRED -> of(Fact.REPAIRED);
      case RESET, METER_PROVED -> NONE;
    };
  }

  /** The first of a control's positions; {@link #NONE} if nothing mentions one. */
  int firstPosition(String control) {
    return firstPosition.getOrDefault(control, NONE);
  }

  int positions(String control) {
    return positions.getOrDefault(control, Map.of()).size();
  }

  /** The name that a fact is about, as first written. */
  public String words(int fact) {
    return words.get(fact);
  }

  /** The facts that hold before the first step: every source on, every control at its system's first position. */
  void forStart(IntConsumer take) {
    for (int source = first(Fact.TRIED); source < end(Fact.TRIED); source++) {
      take.accept(source);
    }
    system.ifPresent(known -> positions.keySet().forEach(control -> {
      Control selector = known.controls().get(control);
      if (selector != null && !selector.positions().isEmpty()) {
        int fact = at(control, selector.positions().get(0));
        if (fact != NONE) {
          take.accept(fact);
        }
      }
    }));
  }

  /** Whether a fact about a control's position holds before the first step. */
  public boolean isStart(int fact) {
    boolean[] start = new boolean[count()];
    forStart(one -> start[one] = true);
    return start[fact];
  }

  /** Whether a name is a power source. */
  public boolean isSource(String key) {
    return places.get(Fact.ISOLATED.ordinal()).containsKey(key) || system.map(known -> known.controls().get(key))
        .filter(control -> control.role() == Vocabulary.Role.ISOLATOR).isPresent();
  }

  /** Whether a name holds the charge of a capacitor: by the system if it lists the part, else by the name. */
  public boolean holdsCharge(String key) {
    return ObjectNames.holdsCharge(system, key);
  }

  /** The keys of what holds the same charge as a thing: discharging one discharges all. */
  public Set<String> sharingCharge(String key) {
    return system.map(known -> known.sharingCharge(key)).orElse(Set.of(key));
  }

  private void gather(Step step) {
    if (step instanceof Step.Check check) {
      for (Setting setting : check.presumed()) {
        addPosition(setting.control(), setting.position());
      }
    }
    if (repairs.isFinding(step)) {
      add(Fact.FOUND_AT, step.id());
      add(Fact.FAULT_LEFT, step.id());
    }
    List<Action> actions = step.actions();
    for (int i = 0; i < actions.size(); i++) {
      List<StateChange> changes = actions.get(i).changes();
      for (int j = 0; j < changes.size(); j++) {
        if (changes.get(j) instanceof StateChange.Begin begin) {
          gather(begin.condition(), begin.key());
        } else if (changes.get(j) instanceof StateChange.SetPosition set) {
          addPosition(set.control(), set.position());
          add(Fact.SET, set.control());
        }
      }
      gatherProof(step, actions.get(i));
    }
  }

  private void gatherProof(Step step, Action action) {
    if (action.kind().begins(EquipmentCondition.PROVED_DEAD)) {
      add(Fact.PROVED_POINT, pointKey(action.key(), place(step)));
      add(Fact.STILL_LIVE, place(step));
    }
  }

  /** The key of a point at a place, as facts about points name it. */
  public static String pointKey(String point, String place) {
    return point + " at " + place;
  }

  private void addPosition(String control, String position) {
    add(positions.computeIfAbsent(control, any -> new LinkedHashMap<>()), position);
  }

  private void gather(EquipmentCondition begun, String key) {
    switch (begun) {
      case ISOLATED -> {
        add(Fact.ISOLATED, key);
        add(Fact.OFF_UNTAGGED, key);
        add(Fact.TRIED, key);
      }
      case TRIED -> add(Fact.TRIED, key);
      case OPEN -> add(Fact.OPEN, key);
      case BYPASSED -> add(Fact.BYPASSED, key);
      case DISCHARGED -> add(Fact.DISCHARGED, key);
      case DISCONNECTED -> add(Fact.DISCONNECTED, key);
      case PROVED_DEAD, TOUCHED -> add(Fact.PROVED_AT, key);
      case REPLACED -> {
        if (ObjectNames.isPart(system, key, "fuse")) {
          add(Fact.FUSE_REPLACED, key);
        }
      }
      case TAGGED_OUT, RESET, REPAIRED, METER_PROVED -> {}
    }
  }

  /** The key of a step's location; {@code ""} if it names none. */
  public static String place(Step step) {
    return step.at().isPresent() ? step.at().get().key() : "";
  }

  private void add(Fact kind, String key) {
    add(places.get(kind.ordinal()), key);
  }

  private static void add(Map<String, Integer> known, String key) {
    if (!known.containsKey(key)) {
      known.put(key, known.size());
    }
  }

  private void number() {
    int next = 0;
    for (Fact kind : Fact.ALL) {
      first[kind.ordinal()] = next;
      if (kind == Fact.AT) {
        next = numberPositions(next);
      } else {
        words.addAll(places.get(kind.ordinal()).keySet());
        next += places.get(kind.ordinal()).size();
      }
    }
    first[Fact.ALL.length] = next;
  }

  private int numberPositions(int from) {
    int next = from;
    for (Map.Entry<String, Map<String, Integer>> control : positions.entrySet()) {
      firstPosition.put(control.getKey(), next);
      control.getValue().keySet().forEach(position -> words.add(control.getKey() + " " + position));
      next += control.getValue().size();
    }
    return next;
  }
}
