/**
 * Rules that protect people and equipment. They must hold on every path; each problem shows one path on which they do
 * not.
 */
package rungbook.rules.safety;
