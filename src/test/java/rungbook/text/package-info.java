/** Tests of the functions on text, and how fast the machine is that runs them. */
package rungbook.text;
