/** Rules about answers: every reading and every word has exactly one way on, and the meter can tell them apart. */
package rungbook.rules.readings;
