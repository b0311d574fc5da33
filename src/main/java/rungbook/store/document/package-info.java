/**
 * Documents, their revisions and drafts as values, the rules of what may be saved, and archives of a library. No
 * database.
 */
package rungbook.store.document;
