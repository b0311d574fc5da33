/** Field records and results of practice that come back: found in what was sent, read, and matched to their pages. */
package rungbook.web.record;
