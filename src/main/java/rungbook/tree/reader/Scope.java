package rungbook.tree.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Document;

/**
 * The scope of one file's headings: the tree's own text, or a fragment as included by one step.
 *
 * @param prefix the prefix of its steps' ids
 * @param indexBySlug the indexes of its steps by slug; filled while steps are ordered
 * @param exitBySlug the exit steps' names, by slug
 * @param chapters the slugs of headings that are not steps
 * @param taker the step that includes the fragment; empty for the tree's own text
 * @param depth the nesting depth; 0 for the tree's own text
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

  /** Whether this scope or one around it is the given file. */
  @SuppressWarnings("ReferenceEquality") // a file is read once, and comparing by value would compare whole texts
  boolean isWithin(Document other) {
    return document == other || taker.filter(step -> step.scope().isWithin(other)).isPresent();
  }
}
