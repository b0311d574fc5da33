/** What a system's text says of its variants: their blocks, and the text that each of them has. */
package rungbook.system.variant;
