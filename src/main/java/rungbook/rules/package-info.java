/** Rules look at a tree and report problems. One rule a class, listed in {@link rungbook.rules.Registry}; no rule reads or writes anything. */
package rungbook.rules;
