package rungbook.system.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Document;
import rungbook.system.Names;
import rungbook.system.reader.PartKind.Asked;

/**
 * What a condition can ask about. All names are keys.
 *
 * @param switches what can be open or closed
 * @param loads what can be on or humming
 * @param states what can only be on
 * @param variants those of the system, and whether it is read as that one
 */
record ConditionNames(Set<String> switches, Set<String> loads, Set<String> states, Map<String, Boolean> variants) {

  /** Before the name of a variant. */
  static final String VARIANT = "variant ";

  /** @param variant the key of the one that is read; empty for the base */
  static ConditionNames of(Document document, String variant) {
    var names = new ConditionNames(new HashSet<>(), new HashSet<>(), new HashSet<>(), new HashMap<>());
    document.entries("parts").forEach(entry -> PartKind.of(entry).flatMap(kind -> names.of(kind.asked()))
        .ifPresent(keys -> keys.add(Names.key(entry.key()))));
    document.entries("variants").map(entry -> Names.key(entry.key()))
        .forEach(key -> names.variants.put(key, key.equals(variant)));
    return names;
  }

  private Optional<Set<String>> of(Asked asked) {
    return switch (asked) {
      case POSITION -> Optional.of(switches);
      case OPERATION -> Optional.of(loads);
      case STATE -> Optional.of(states);
      case NOTHING -> Optional.empty();
    };
  }

  /** The names that mean one thing here and another there. */
  Set<String> changed(ConditionNames there) {
    Set<String> changed = new HashSet<>();
    difference(switches, there.switches, changed);
    difference(loads, there.loads, changed);
    difference(states, there.states, changed);
    variants.forEach((key, holds) -> {
      if (!holds.equals(there.variants.get(key))) {
        changed.add(VARIANT + key);
      }
    });
    return changed;
  }

  private static void difference(Set<String> here, Set<String> there, Set<String> changed) {
    here.stream().filter(name -> !there.contains(name)).forEach(changed::add);
    there.stream().filter(name -> !here.contains(name)).forEach(changed::add);
  }
}
