/** Small pure functions on text for every package: escaping, URLs, digests, plurals, dates, and search words. */
package rungbook.text;
