/** The REST interface under {@code /api}, one class for each kind of thing. */
package rungbook.web.api;
