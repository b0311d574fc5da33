package rungbook.tree;

import rungbook.source.Span;
import rungbook.system.Names;

/**
 * A name in the tree's text and its place.
 *
 * @param text as written
 */
public record NameRef(String text, Span span) {

  public String key() {
    return Names.key(text);
  }
}
