/**
 * Keeps the library: every text and picture, each as a chain of revisions that only grows.
 *
 * <p>A document is known by its {@link rungbook.store.document.DocumentPath}. {@link rungbook.store.Store} saves and
 * reads; a save names the revision it was based on, and one that lost the race is kept as a {@link
 * rungbook.store.document.Draft}. Each revision carries the hash of the one before it, so that {@link
 * rungbook.store.document.Chain} can tell when history was tampered with.
 *
 * <p>The only room that knows the database. It keeps text and knows nothing of trees.
 */
package rungbook.store;
