/** Rules about the cautions that a step names: which it must name, and what they promise. */
package rungbook.rules.cautions;
