/** The fault cases of a system: one fault each, or faults that come together; and what solves them. */
package rungbook.proof.cases;
