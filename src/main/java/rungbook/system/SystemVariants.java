package rungbook.system;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A system in every form that is in the field. Immutable; keeps what was worked out from it. */
public final class SystemVariants {

  private final ControlSystem base;
  private final List<Variant> variants;
  private final Map<Function<SystemVariants, ?>, Object> worked = new ConcurrentHashMap<>();
  private final Map<Set<String>, SystemVariants> narrowed = new ConcurrentHashMap<>();

  /**
   * @param base has the share of the installations that no variant has
   * @param variants in the order of the text
   */
  public SystemVariants(ControlSystem base, List<Variant> variants) {
    this.base = base;
    this.variants = List.copyOf(variants);
  }

  public ControlSystem base() {
    return base;
  }

  public List<Variant> variants() {
    return variants;
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
    return keys.isEmpty() ? this
        : narrowed.computeIfAbsent(Set.copyOf(keys), out -> new SystemVariants(base,
            variants.stream().filter(variant -> !out.contains(variant.key())).toList()));
  }

  /**
   * What follows from the system, worked out once for all trees that name it.
   *
   * @param work a constant: the same object for the same work
   */
  @SuppressWarnings("unchecked") // what a work gives is kept under that work
  public <T> T once(Function<SystemVariants, T> work) {
    Object known = worked.get(work);
    if (known == null) {
      known = Objects.requireNonNull(work.apply(this)); // not inside the map: one work may need another
      worked.put(work, known);
    }
    return (T) known;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other == this
        || (other instanceof SystemVariants same && base.equals(same.base) && variants.equals(same.variants));
  }

  @Override
  public int hashCode() {
    return base.hashCode() * 31 + variants.hashCode();
  }
}
