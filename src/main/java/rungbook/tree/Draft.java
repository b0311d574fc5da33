package rungbook.tree;

import rungbook.markdown.Block;
import rungbook.markdown.Section;

/** A step that has its place in the tree but is not read yet. */
record Draft(Scope scope, Section section, Block block) {

  String id() {
    return scope.prefix() + section.slug();
  }

  boolean is(String kind) {
    return block.kind().equals(kind);
  }
}
