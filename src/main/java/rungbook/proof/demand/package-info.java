/**
 * Readings on demand: what a meter shows between two points of a system, and what runs, for positions of the controls
 * and a fault or none. Every room that asks for one such reading asks here.
 */
package rungbook.proof.demand;
