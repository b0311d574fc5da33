package rungbook.tree;

import rungbook.source.Span;
import rungbook.system.Names;

/**
 * A name in the tree's text and its place.
 *
 * @param text as written
 * @param key for lookup; every rule asks for it
 */
public record NameRef(String text, String key, Span span) {

  public NameRef(String text, Span span) {
    this(text, Names.key(text), span);
  }
}
