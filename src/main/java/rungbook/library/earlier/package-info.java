/** Earlier texts of a library's trees, whose proofs are compared with those of today. */
package rungbook.library.earlier;
