package rungbook.system;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A system's vocabulary, its circuit (parts, faults and conditions of the sights), and its terminal strips.
 *
 * @param pairs the faults that come together
 * @param quantities what can be measured outside the circuit
 */
public record ControlSystem(
    Vocabulary vocabulary, List<Part> parts, List<Fault> faults, List<SightCondition> sights,
    List<TerminalStrip> strips, List<FaultPair> pairs, List<QuantityRanges> quantities) {

  /** A system of which no two faults come together, and that states no quantities. */
  public ControlSystem(Vocabulary vocabulary, List<Part> parts, List<Fault> faults, List<SightCondition> sights,
      List<TerminalStrip> strips) {
    this(vocabulary, parts, faults, sights, strips, List.of(), List.of());
  }

  /** A sight, or a value with its sight, and when it is seen. */
  public record SightCondition(String name, Condition when) {}

  public ControlSystem {
    parts = List.copyOf(parts);
    faults = List.copyOf(faults);
    sights = List.copyOf(sights);
    strips = List.copyOf(strips);
    pairs = List.copyOf(pairs);
    quantities = List.copyOf(quantities);
  }

  /** The same system with other faults. */
  public ControlSystem withFaults(List<Fault> others) {
    return new ControlSystem(vocabulary, parts, others, sights, strips, List.of(), quantities);
  }

  public <T extends Part> Stream<T> parts(Class<T> kind) {
    return parts.stream().filter(kind::isInstance).map(kind::cast);
  }

  public Optional<Part> part(String key) {
    return parts.stream().filter(part -> part.key().equals(key)).findFirst();
  }

  /** The part that a branch belongs to, by the branch's key. */
  public Optional<Part> partOfBranch(String key) {
    return parts.stream().filter(part -> part.branches().stream().anyMatch(branch -> branch.key().equals(key)))
        .findFirst();
  }

  /** The first branch with this key. */
  public Optional<PartBranch> branch(String key) {
    return parts.stream().flatMap(part -> part.branches().stream()).filter(branch -> branch.key().equals(key))
        .findFirst();
  }
}
