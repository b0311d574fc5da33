/**
 * Where a measurement is in the circuit: the rung from rail to rail, upright so that it can be read on a phone, the
 * whole ladder, and the faults that can still be the cause. Pure.
 */
package rungbook.pack.circuit;
