package rungbook.tree.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Document;

/**
 * Where the headings of one file mean something: the tree's own, or a fragment's as one step took it in.
 *
 * @param prefix what stands before the ids of its steps
 * @param indexBySlug the steps, by slug; filled while the steps are laid out
 * @param exitBySlug the exit steps' names, by slug
 * @param chapters the headings that are no steps, by slug
 * @param taker the step that took the fragment in
 * @param depth how many fragments it is taken into, itself counted; 0 for the tree's own text
 */
record Scope(
    Document document, String prefix, Map<String, Integer> indexBySlug, Map<String, String> exitBySlug,
    Set<String> chapters,
    Optional<UnresolvedStep> taker, int depth) {

  static Scope of(Document document) {
    return new Scope(document, "", new HashMap<>(), new HashMap<>(), new HashSet<>(), Optional.empty(), 0);
  }

  static Scope takenIn(Document fragment, UnresolvedStep taker) {
    return new Scope(fragment, taker.id() + "--", new HashMap<>(), new HashMap<>(), new HashSet<>(), Optional.of(taker),
        taker.scope().depth() + 1);
  }

  /** Whether this scope, or one that it was taken into, already is this file. */
  boolean isWithin(Document other) {
    return document == other || taker.filter(step -> step.scope().isWithin(other)).isPresent();
  }
}
