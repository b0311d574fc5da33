/** What a rule is, and the tree as a rule sees it. */
package rungbook.rules.api;
