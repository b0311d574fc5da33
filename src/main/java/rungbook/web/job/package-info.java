/** Long work of the server, each person's in turn, that can be stopped. */
package rungbook.web.job;
