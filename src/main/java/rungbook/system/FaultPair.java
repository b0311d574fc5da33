package rungbook.system;

/**
 * A fault that brings another: what causes the second, or what has failed with it.
 *
 * @param first the key of the fault whose line says so
 * @param second the key of the fault that comes with it
 * @param share of the first fault's installations that have both, from 0 to 1
 */
public record FaultPair(String first, String second, double share) {}
