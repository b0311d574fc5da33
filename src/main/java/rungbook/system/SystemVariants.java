package rungbook.system;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A system in every form that is in the field.
 *
 * @param base has the share of the installations that no variant has
 * @param variants in the order of the text
 */
public record SystemVariants(ControlSystem base, List<Variant> variants) {

  public SystemVariants {
    variants = List.copyOf(variants);
  }

  /** The base, then its variants. */
  public Stream<ControlSystem> all() {
    return Stream.concat(Stream.of(base), variants.stream().map(Variant::system));
  }

  /** The share of the base, from 0 to 1. */
  public double baseShare() {
    return Math.max(0, 1 - variants.stream().mapToDouble(Variant::share).sum());
  }

  /** @param keys of the variants to leave out */
  public SystemVariants without(Set<String> keys) {
    return new SystemVariants(base, variants.stream().filter(variant -> !keys.contains(variant.key())).toList());
  }
}
