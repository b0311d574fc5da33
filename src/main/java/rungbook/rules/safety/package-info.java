/** Rules that keep people and equipment whole. They hold on every path; one path on which they do not is reported. */
package rungbook.rules.safety;
