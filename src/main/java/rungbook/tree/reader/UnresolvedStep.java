package rungbook.tree.reader;

import rungbook.markdown.Block;
import rungbook.markdown.Section;
import rungbook.source.Source;

/** A step whose position in the tree is known but whose block is not read yet. */
record UnresolvedStep(Scope scope, Section section, Block block) {

  String id() {
    return scope.prefix() + section.slug();
  }

  Source source() {
    return scope.document().source();
  }

  boolean is(String kind) {
    return block.kind().equals(kind);
  }
}
