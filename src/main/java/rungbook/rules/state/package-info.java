/** Rules about the state of the equipment at a step: power, calls, panels, and which terminals are where. */
package rungbook.rules.state;
