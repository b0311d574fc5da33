/** Practice pages on the server. */
package rungbook.web.practice;
