package rungbook.circuit.network;

import java.util.Optional;
import java.util.Set;

/**
 * What a state comes from.
 *
 * @param before the state in which the equipment was until the last change
 * @param renewed fuses and breakers that the last change has replaced, and switches that it has reset
 * @param waitSeconds how long somebody has waited since
 * @param repaired the key of the case that it was before a repair took a fault away
 */
public record Past(CircuitState before, Set<String> renewed, int waitSeconds, Optional<String> repaired) {

  /** Longer than any delay. */
  public static final int LONG = Integer.MAX_VALUE;

  public Past {
    renewed = Set.copyOf(renewed);
  }
}
