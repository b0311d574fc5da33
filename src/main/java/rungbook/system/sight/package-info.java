/** What can be seen, heard or felt: the lines of {@code sights}, and what faults show by themselves. */
package rungbook.system.sight;
