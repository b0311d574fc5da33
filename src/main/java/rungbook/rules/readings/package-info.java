/** Whether every reading and every word has exactly one way on, and whether the meter can tell them apart. */
package rungbook.rules.readings;
