/** Rules about structure: every step is reached, has a way on, and leads to an end. */
package rungbook.rules.structure;
