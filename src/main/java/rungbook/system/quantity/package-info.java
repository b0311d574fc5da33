/** What can be measured outside the circuit: the lines of {@code quantities}, and the ranges that faults show. */
package rungbook.system.quantity;
