package rungbook.circuit.network;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/**
 * The state in which a technician has left the system. All names are keys.
 *
 * @param positions the position of each selector
 * @param off isolated power sources
 * @param bypassed interlocks with a jumper across them
 * @param disconnected disconnected parts, conductors ({@code outdoor cable y}) or terminals ({@code y at furnace})
 * @param open open panels
 * @param replaced fuses and breakers that were replaced; a new one is intact until the circuit opens it
 * @param past what it comes from; empty where everything was dropped out before
 */
public record CircuitState(Map<String, String> positions, Set<String> off, Set<String> bypassed,
    Set<String> disconnected,
    Set<String> open, Set<String> replaced, Optional<Past> past) {

  public CircuitState(Map<String, String> positions, Set<String> off, Set<String> bypassed, Set<String> disconnected,
      Set<String> open, Set<String> replaced) {
    this(positions, off, bypassed, disconnected, open, replaced, Optional.empty());
  }

  public CircuitState {
    positions = Map.copyOf(positions);
    off = Set.copyOf(off);
    bypassed = Set.copyOf(bypassed);
    disconnected = Set.copyOf(disconnected);
    open = Set.copyOf(open);
    replaced = Set.copyOf(replaced);
  }

  /** Power on, panels closed, every selector at its first position. */
  public static CircuitState start(Vocabulary words) {
    var positions = new HashMap<String, String>();
    words.controls().forEach(
        (key, control) -> control.positions().stream().findFirst().ifPresent(first -> positions.put(key, first)));
    return new CircuitState(positions, Set.of(), Set.of(), Set.of(), Set.of(), Set.of());
  }

  /** This state where it comes from another one, and some fuses were replaced, or switches reset, meanwhile. */
  public CircuitState from(CircuitState before, Set<String> renewed) {
    return with(new Past(before, renewed, 0, Optional.empty()));
  }

  /** This state where it comes from another one, once every delay has run out. */
  public CircuitState afterDelays(CircuitState before, Set<String> renewed) {
    return with(new Past(before, renewed, Past.LONG, Optional.empty()));
  }

  /** This state once somebody has waited in it. */
  public CircuitState waited(int seconds) {
    return with(new Past(this, Set.of(), seconds, Optional.empty()));
  }

  /** This state with a past of its own. */
  public CircuitState with(Past past) {
    return new CircuitState(positions, off, bypassed, disconnected, open, replaced, Optional.of(past));
  }

  /** Whether two states are the same but for their past. */
  boolean isAlike(CircuitState other) {
    return positions.equals(other.positions) && off.equals(other.off) && bypassed.equals(other.bypassed)
        && disconnected.equals(other.disconnected) && open.equals(other.open) && replaced.equals(other.replaced);
  }

  /** This state where everything was dropped out before. */
  public CircuitState alone() {
    return past.isEmpty() ? this : new CircuitState(positions, off, bypassed, disconnected, open, replaced);
  }

  /** This state and those that it comes from, the latest first. */
  public Stream<CircuitState> andBefore() {
    return Stream.iterate(Optional.of(this), Optional::isPresent, state -> state.flatMap(CircuitState::past)
        .map(Past::before)).flatMap(Optional::stream);
  }

  /** The state after these changes, applied in order, where everything was dropped out before. */
  public CircuitState after(List<StateChange> changes) {
    CircuitState state = alone();
    for (StateChange change : changes) {
      state = state.after(change);
    }
    return state;
  }

  private CircuitState after(StateChange change) {
    if (change instanceof StateChange.SetPosition set) {
      return set(set.control(), set.position());
    }
    if (change instanceof StateChange.Begin begin) {
      return begin(begin.condition(), begin.key());
    }
    StateChange.End end = (StateChange.End) change;
    return end(end.condition(), end.key());
  }

  private CircuitState begin(EquipmentCondition condition, String key) {
    return switch (condition) {
      case ISOLATED -> isolate(key);
      case BYPASSED -> bypass(key);
      case DISCONNECTED -> disconnect(key);
      case OPEN -> open(key);
      case REPLACED, RESET -> replace(key);
      case REPAIRED, TRIED, TAGGED_OUT, DISCHARGED, PROVED_DEAD, TOUCHED, METER_PROVED -> this;
    };
  }

  private CircuitState end(EquipmentCondition condition, String key) {
    return switch (condition) {
      case ISOLATED -> new CircuitState(positions, minus(off, key), bypassed, disconnected, open, replaced);
      case BYPASSED -> new CircuitState(positions, off, minus(bypassed, key), disconnected, open, replaced);
      case DISCONNECTED -> new CircuitState(positions, off, bypassed, minus(disconnected, key), open, replaced);
      case OPEN -> new CircuitState(positions, off, bypassed, disconnected, minus(open, key), replaced);
      case REPLACED, RESET, REPAIRED, TRIED, TAGGED_OUT, DISCHARGED, PROVED_DEAD, TOUCHED, METER_PROVED -> this;
    };
  }

  public CircuitState set(String control, String position) {
    var more = new HashMap<>(positions);
    more.put(Names.key(control), Names.key(position));
    return new CircuitState(more, off, bypassed, disconnected, open, replaced);
  }

  public CircuitState isolate(String control) {
    return new CircuitState(positions, plus(off, control), bypassed, disconnected, open, replaced);
  }

  /** With every source switched on, all else as it is. */
  public CircuitState withPower() {
    return new CircuitState(positions, Set.of(), bypassed, disconnected, open, replaced);
  }

  public CircuitState bypass(String interlock) {
    return new CircuitState(positions, off, plus(bypassed, interlock), disconnected, open, replaced);
  }

  public CircuitState disconnect(String thing) {
    return new CircuitState(positions, off, bypassed, plus(disconnected, thing), open, replaced);
  }

  public CircuitState open(String panel) {
    return new CircuitState(positions, off, bypassed, disconnected, plus(open, panel), replaced);
  }

  public CircuitState replace(String part) {
    return new CircuitState(positions, off, bypassed, disconnected, open, plus(replaced, part));
  }

  /** The number of combinations of the positions of some controls; at most {@code Long.MAX_VALUE}. */
  public static long positionCount(Collection<Vocabulary.Control> controls) {
    return controls.stream().mapToLong(control -> Math.max(1, control.positions().size()))
        .reduce(1, (all, positions) -> all > Long.MAX_VALUE / positions ? Long.MAX_VALUE : all * positions);
  }

  /** This state with every combination of selector positions. */
  public List<CircuitState> everyPosition(Vocabulary words) {
    var all = List.of(this);
    for (var control : words.controls().entrySet()) {
      if (!control.getValue().positions().isEmpty()) {
        all = all.stream()
            .flatMap(state -> control.getValue().positions().stream().map(p -> state.set(control.getKey(), p)))
            .toList();
      }
    }
    return all;
  }

  private static Set<String> plus(Set<String> set, String name) {
    var more = new HashSet<>(set);
    more.add(Names.key(name));
    return more;
  }

  private static Set<String> minus(Set<String> set, String key) {
    var less = new HashSet<>(set);
    less.remove(key);
    return less;
  }
}
