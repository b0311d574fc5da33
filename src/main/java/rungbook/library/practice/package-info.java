/** The pages to practice on the systems of a library. */
package rungbook.library.practice;
