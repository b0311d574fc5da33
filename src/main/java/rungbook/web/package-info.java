/**
 * Pages and REST, for browsers and programs on this machine.
 *
 * <p>{@link rungbook.web.Guard} stands before every request. Pages are classes named {@code …Page} with a template of the same
 * name; programs are answered by the classes named {@code …Api}, under {@code /api}. {@link rungbook.web.Shelf} has the library
 * as it is compiled now. What goes wrong is a {@link rungbook.web.Trouble}: one sentence of what, one of how to put it right.
 */
package rungbook.web;
