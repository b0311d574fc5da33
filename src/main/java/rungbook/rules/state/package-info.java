/**
 * Rules about the state a step finds the equipment in: power, calls, panels, and which terminals can be reached where.
 */
package rungbook.rules.state;
