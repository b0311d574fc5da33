/** Looks up what trees share: reads each text when it is first needed, and notes which of them a tree asks for. */
package rungbook.library.lookup;
