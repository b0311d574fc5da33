package rungbook.circuit.network;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What a state comes from. Its hash is computed once, and it is compared step by step: a long walk has thousands of
 * states, one before the other.
 */
public final class Past {

  /** Seconds that are longer than any delay. */
  public static final int LONG = Integer.MAX_VALUE;

  private final CircuitState before;
  private final Set<String> renewed;
  private final int waitSeconds;
  private final Optional<String> repaired;
  private final int hash;

  /**
   * @param before the state in which the equipment was until the last change
   * @param renewed fuses and breakers that the last change has replaced, and switches that it has reset
   * @param waitSeconds how long somebody has waited since
   * @param repaired the key of the case that it was before a repair took a fault away
   */
  public Past(CircuitState before, Set<String> renewed, int waitSeconds, Optional<String> repaired) {
    this.before = before;
    this.renewed = Set.copyOf(renewed);
    this.waitSeconds = waitSeconds;
    this.repaired = repaired;
    this.hash = Objects.hash(before, renewed, waitSeconds, repaired);
  }

  /** The state in which the equipment was until the last change. */
  public CircuitState before() {
    return before;
  }

  /** Fuses and breakers that the last change has replaced, and switches that it has reset. */
  public Set<String> renewed() {
    return renewed;
  }

  /** How long somebody has waited since. */
  public int waitSeconds() {
    return waitSeconds;
  }

  /** The key of the case that it was before a repair took a fault away. */
  public Optional<String> repaired() {
    return repaired;
  }

  @Override
  public boolean equals(Object other) {
    if (!(other instanceof Past past)) {
      return false;
    }
    Optional<Past> one = Optional.of(this);
    Optional<Past> two = Optional.of(past);
    while (one.isPresent() && two.isPresent() && one.get() != two.get()) {
      if (!one.get().isAlike(two.get())) {
        return false;
      }
      one = one.get().before.past();
      two = two.get().before.past();
    }
    return one.isPresent() == two.isPresent();
  }

  /** Whether the last change is the same, and the state before but for its own past. */
  private boolean isAlike(Past other) {
    return hash == other.hash && waitSeconds == other.waitSeconds && renewed.equals(other.renewed)
        && repaired.equals(other.repaired) && before.isAlike(other.before);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public String toString() {
    return "after " + before.positions() + " " + renewed + " " + waitSeconds + " s " + repaired;
  }
}
