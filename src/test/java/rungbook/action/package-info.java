/** What every action does, against a table written by hand. */
package rungbook.action;
