package rungbook.proof.plan;

import java.util.Optional;
import rungbook.tree.Tree;

/** The other trees of a library, by id. A proof asks for as little of a tree as it needs. */
@FunctionalInterface
public interface OtherTrees {

  /** A tree whose steps are followed. */
  Optional<Tree> tree(String id);

  /** A tree of which only the findings count. */
  default Optional<TreeClaims> claims(String id) {
    return tree(id).map(TreeClaims::of);
  }
}
