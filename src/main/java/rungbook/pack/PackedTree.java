package rungbook.pack;

import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.CircuitFacts;
import rungbook.tree.Tree;

/**
 * A tree that is packed together with others.
 *
 * @param facts what its circuit says of its steps, as far as it is known
 * @param digest of its pack of the same edition, 64 hexadecimal digits
 */
public record PackedTree(Tree tree, CircuitFacts facts, Edition edition, String digest) {

  /** @param material what its pack is made of besides it */
  public static PackedTree of(Tree tree, CircuitFacts facts, PackInput material, Edition edition) {
    return new PackedTree(tree, facts, edition, Pack.of(tree, facts, material, edition).digest());
  }
}
