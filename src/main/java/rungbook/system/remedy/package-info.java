/** What takes each fault of a system away: the parts that it is in. */
package rungbook.system.remedy;
