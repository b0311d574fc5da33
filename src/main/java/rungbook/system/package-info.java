/**
 * A system as records: its locations, points and controls, and the parts and faults of its circuit. Knows nothing of
 * how a system is written.
 */
package rungbook.system;
