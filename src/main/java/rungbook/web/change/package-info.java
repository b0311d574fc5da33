/** Changes of several texts at once: first what they would do, then all of it or nothing. */
package rungbook.web.change;
