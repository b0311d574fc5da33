package rungbook.system.reader;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/** What the lines of a system were read as, for its variants to take over. */
record BaseLines(ConditionNames names, ControlSystem system, ReadLines<Part> parts,
    ReadLines<List<ControlSystem.SightCondition>> sights, ReadLines<Fault> faults) {

  /** Nothing to take over. */
  static BaseLines none(Vocabulary words, ConditionNames names) {
    return new BaseLines(names, new ControlSystem(words, List.of(), List.of(), List.of(), List.of()),
        new ReadLines<>(), new ReadLines<>(), new ReadLines<>());
  }

  /** The same lines as those of a system that was read with them. */
  BaseLines of(ControlSystem read) {
    return new BaseLines(names, read, parts, sights, faults);
  }

  /** The keys of the parts, and of their branches, that are not the same in a variant. */
  Set<String> changedParts(List<Part> there) {
    Set<String> changed = new HashSet<>();
    addOthers(system.parts(), there, changed);
    addOthers(there, system.parts(), changed);
    return changed;
  }

  private static void addOthers(List<Part> parts, List<Part> without, Set<String> keys) {
    Set<Part> known = Collections.newSetFromMap(new IdentityHashMap<>());
    known.addAll(without);
    parts.stream().filter(part -> !known.contains(part)).forEach(part -> {
      keys.add(part.key());
      part.branches().forEach(branch -> keys.add(branch.key()));
    });
  }
}
