/**
 * What earlier runs found, kept in a folder that may be deleted at any time: an entry is named after the hash of
 * everything that it depends on, so it is never out of date. Reads only the trees that the rest of a run needs.
 */
package rungbook.cli.cache;
