package rungbook.circuit.sequence;

/**
 * Where some of the samples of one case came to rest.
 *
 * @param samples their numbers
 * @param modes how each link stands
 * @param steady false where the circuit goes round in a circle; {@code standing} is then one moment of it
 */
public record SteadyState(int[] samples, RelayState standing, byte[] modes, boolean steady) {}
