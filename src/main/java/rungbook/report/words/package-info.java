/** Two faults at once, and faults that come and go, in words for the terminal and the pages. */
package rungbook.report.words;
