/** Which faults of a system come together. */
package rungbook.system.pairs;
