/** Where a system's wiring can hurt: conductors that a supply reaches. */
package rungbook.system.hazard;
