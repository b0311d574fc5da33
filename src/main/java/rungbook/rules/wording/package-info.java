/** The words of texts: those that a library avoids, and what it writes instead. */
package rungbook.rules.wording;
