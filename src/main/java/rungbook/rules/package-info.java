/** Every rule, listed in {@link rungbook.rules.Registry}. One rule a class; no rule reads or writes anything. */
package rungbook.rules;
