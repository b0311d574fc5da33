/**
 * The command line. Commands read files through {@link rungbook.library}, print through {@link rungbook.report}, and
 * know neither the server nor its database.
 */
package rungbook.cli;
