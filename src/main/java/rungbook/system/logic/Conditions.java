package rungbook.system.logic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rungbook.system.Condition;
import rungbook.system.Part;

/** Tests the conditions of a system's text; a name that the system does not have is never on and always closed. */
final class Conditions {

  private final Map<String, Integer> loads;
  private final Map<String, Integer> states;
  private final Map<String, Integer> contacts;

  Conditions(List<Part.Load> loads, List<Part.State> states, List<Part.Switch> contacts) {
    this.loads = index(loads);
    this.states = index(states);
    this.contacts = index(contacts);
    for (Part.Switch contact : contacts) {
      contact.branches().forEach(limb -> this.contacts.putIfAbsent(limb.key(), this.contacts.get(contact.key())));
    }
  }

  private static Map<String, Integer> index(List<? extends Part> parts) {
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      index.putIfAbsent(parts.get(i).key(), i);
    }
    return index;
  }

  boolean holds(Condition condition, Relays relays, ControlState state) {
    if (condition instanceof Condition.All all) {
      return !holdsOne(all.of(), false, relays, state);
    }
    if (condition instanceof Condition.Any any) {
      return holdsOne(any.of(), true, relays, state);
    }
    if (condition instanceof Condition.Not not) {
      return !holds(not.of(), relays, state);
    }
    if (condition instanceof Condition.Selected selected) {
      return selected.position().equals(state.positions().get(selected.control()));
    }
    return holds(condition, relays);
  }

  /** Whether one of these conditions holds, or one does not. */
  private boolean holdsOne(List<Condition> conditions, boolean wanted, Relays relays, ControlState state) {
    for (Condition condition : conditions) {
      if (holds(condition, relays, state) == wanted) {
        return true;
      }
    }
    return false;
  }

  private boolean holds(Condition condition, Relays relays) {
    if (condition instanceof Condition.On on) {
      Integer load = loads.get(on.name());
      return load != null ? relays.on[load] : is(relays.states, states.get(on.name()), false);
    }
    if (condition instanceof Condition.Humming humming) {
      Integer load = loads.get(humming.name());
      return is(relays.fed, load, false) && !is(relays.on, load, true);
    }
    return is(relays.closed, contacts.get(((Condition.Closed) condition).name()), true);
  }

  private static boolean is(boolean[] values, @Nullable Integer at, boolean unknown) {
    return at == null ? unknown : values[at];
  }
}
