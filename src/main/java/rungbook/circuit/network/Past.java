package rungbook.circuit.network;

import java.util.Set;

/**
 * What a state comes from.
 *
 * @param before the state in which the equipment was until the last change
 * @param renewed fuses and breakers that the last change has replaced
 */
public record Past(CircuitState before, Set<String> renewed) {

  public Past {
    renewed = Set.copyOf(renewed);
  }
}
