package rungbook.pack.circuit;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.ladder.Element;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.PartBranch;
import rungbook.system.SystemVariants;
import rungbook.system.remedy.Remedy;
import rungbook.system.remedy.RemedyFinder;

/** Numbers the faults of a system, then faults that come together: the same numbers for each tree on the system. */
final class FaultNumbers {

  private final SystemVariants systems;
  private final Map<Set<String>, Integer> numbers = new LinkedHashMap<>();

  FaultNumbers(SystemVariants systems) {
    this.systems = systems;
    systems.all().flatMap(system -> system.faults().stream()).forEach(fault -> add(Set.of(fault.key())));
    systems.all().flatMap(system -> system.pairs().stream())
        .forEach(pair -> add(Set.of(pair.first(), pair.second())));
  }

  private void add(Set<String> faults) {
    numbers.putIfAbsent(faults, numbers.size());
  }

  int count() {
    return numbers.size();
  }

  /** Empty for faults that the system does not list together. */
  Optional<Integer> of(List<String> faults) {
    return Optional.ofNullable(numbers.get(Set.copyOf(faults)));
  }

  /** The names of the faults, in the order of their numbers. */
  List<String> names() {
    return numbers.keySet().stream()
        .map(faults -> faults.stream().map(this::name).sorted().collect(Collectors.joining(" and "))).toList();
  }

  private String name(String fault) {
    return systems.all().flatMap(system -> Optional.ofNullable(system.vocabulary().faults().get(fault)).stream())
        .findFirst().orElse(fault);
  }

  /** What can be wrong with an element of the ladder. */
  BitSet in(Element element) {
    Map<String, Remedy> remedies = RemedyFinder.of(systems);
    var in = new BitSet();
    numbers.forEach((faults, number) -> in.set(number, faults.stream()
        .anyMatch(fault -> Optional.ofNullable(remedies.get(fault)).filter(one -> isIn(one, element)).isPresent())));
    return in;
  }

  /** A fault of one conductor of a cable is not in its other conductors. */
  private boolean isIn(Remedy remedy, Element element) {
    String limb = Names.key(element.name());
    return remedy.sites().stream().anyMatch(site -> site.contains(limb)
        || (site.contains(element.part()) && limbs(element.part()).stream().noneMatch(site::contains)));
  }

  private Set<String> limbs(String part) {
    ControlSystem base = systems.base();
    return base.part(part).map(one -> one.branches().stream().map(PartBranch::key).filter(key -> !key.equals(part))
        .collect(Collectors.toSet())).orElse(Set.of());
  }
}
