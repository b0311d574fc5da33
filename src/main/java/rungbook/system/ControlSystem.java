package rungbook.system;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A system with its circuit: what a proof needs beside the words of the {@link Vocabulary}. */
public record ControlSystem(Vocabulary vocabulary, List<Part> parts, List<Fault> faults, List<SightCondition> sights) {

  public ControlSystem {
    parts = List.copyOf(parts);
    faults = List.copyOf(faults);
    sights = List.copyOf(sights);
  }

  public <T extends Part> Stream<T> parts(Class<T> kind) {
    return parts.stream().filter(kind::isInstance).map(kind::cast);
  }

  public Optional<Part> part(String key) {
    return parts.stream().filter(part -> part.key().equals(key)).findFirst();
  }

  /** The part a limb belongs to. */
  public Optional<Part> partOfLimb(String key) {
    return parts.stream().filter(part -> part.limbs().stream().anyMatch(limb -> limb.key().equals(key))).findFirst();
  }

  /** The limb of this key; of several, the first. */
  public Optional<PartBranch> limb(String key) {
    return parts.stream().flatMap(part -> part.limbs().stream()).filter(limb -> limb.key().equals(key)).findFirst();
  }
}
