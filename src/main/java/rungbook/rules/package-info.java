/** Every rule, listed in {@link rungbook.rules.Registry}. One class per rule; no rule does input or output. */
package rungbook.rules;
