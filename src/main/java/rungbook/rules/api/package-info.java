/** The interface of rules, and the tree as rules see it. */
package rungbook.rules.api;
