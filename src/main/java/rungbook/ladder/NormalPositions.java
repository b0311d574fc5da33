package rungbook.ladder;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Part;

/**
 * Which contacts are closed in the normal position, as drawings show them: de-energized, each control at its first
 * position.
 */
final class NormalPositions {

  private final Map<String, Part.Switch> contacts;
  private final Map<String, String> firsts;
  private final Set<String> asking = new HashSet<>();

  NormalPositions(ControlSystem system) {
    contacts = system.parts(Part.Switch.class)
        .collect(Collectors.toMap(Part::key, contact -> contact, (first, second) -> first));
    firsts = system.vocabulary().controls().entrySet().stream()
        .filter(control -> !control.getValue().positions().isEmpty())
        .collect(Collectors.toMap(Map.Entry::getKey, control -> control.getValue().positions().get(0)));
  }

  boolean isClosed(Part.Switch contact) {
    return holds(contact.closedWhen());
  }

  private boolean holds(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.of().stream().allMatch(this::holds);
    }
    if (condition instanceof Condition.Any any) {
      return any.of().stream().anyMatch(this::holds);
    }
    if (condition instanceof Condition.Not not) {
      return !holds(not.of());
    }
    if (condition instanceof Condition.Selected selected) {
      return selected.position().equals(firsts.get(selected.control()));
    }
    return condition instanceof Condition.Closed closed && isClosed(closed.name());
  }

  /** A fuse is closed; so is a contact that depends on itself. */
  private boolean isClosed(String name) {
    Part.Switch contact = contacts.get(name);
    if (contact == null || !asking.add(name)) {
      return true;
    }
    boolean closed = isClosed(contact);
    asking.remove(name);
    return closed;
  }
}
