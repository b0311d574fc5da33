/** Whether every step can be reached, leads on, and comes to an end. */
package rungbook.rules.structure;
