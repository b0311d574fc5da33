package rungbook.circuit.network;

import java.util.function.ToDoubleFunction;

/** A supply's leg: the link that holds its inner resistance, and its volts without load. */
public record SourceBranch(int link, String part, ToDoubleFunction<Draw> volts) {}
