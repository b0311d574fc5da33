/** Rules about what follows a finding: its repair, the check after it, and the end. */
package rungbook.rules.repair;
