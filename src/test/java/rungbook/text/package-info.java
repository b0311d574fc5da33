/** Tests of the functions on text. */
package rungbook.text;
