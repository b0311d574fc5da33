/** Where a system's wiring can hurt: conductors that a supply reaches, and parts that hold a charge. */
package rungbook.system.hazard;
