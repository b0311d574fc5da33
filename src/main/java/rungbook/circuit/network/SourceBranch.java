package rungbook.circuit.network;

import java.util.function.ToDoubleFunction;

/**
 * One source of a supply.
 *
 * @param branch index of the branch that is its internal resistance
 * @param part key of the supply
 * @param volts no-load voltage, rms
 */
public record SourceBranch(int branch, String part, ToDoubleFunction<Draw> volts) {}
