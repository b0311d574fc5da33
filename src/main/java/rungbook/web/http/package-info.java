/**
 * What every request goes through before a page or the REST interface sees it, and how a failure becomes an answer: a
 * page for people, RFC 9457 problem details for programs.
 */
package rungbook.web.http;
