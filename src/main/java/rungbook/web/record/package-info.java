/** Field records that come back: found in what was sent, read, and matched to the revision that was followed. */
package rungbook.web.record;
