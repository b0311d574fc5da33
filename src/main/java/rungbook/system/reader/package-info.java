/**
 * Turns a parsed document into a {@link rungbook.system.ControlSystem}: reads the vocabulary, parts, faults and sights,
 * and reports what cannot be read or cannot work.
 */
package rungbook.system.reader;
