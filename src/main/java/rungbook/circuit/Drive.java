package rungbook.circuit;

import java.util.function.ToDoubleFunction;

/** A supply's leg: the link that holds its inner resistance, and its volts without load. */
record Drive(int link, String part, ToDoubleFunction<Draw> volts) {}
