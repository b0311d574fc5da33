package rungbook.circuit.sequence;

/**
 * The result of the search for some samples of one case.
 *
 * @param samples indices of the samples
 * @param relays the relay state; if not converged, one state of the cycle
 * @param modes the mode of each branch, by its index
 * @param converged false if the circuit oscillates
 */
public record SteadyState(int[] samples, RelayState relays, byte[] modes, boolean converged) {}
