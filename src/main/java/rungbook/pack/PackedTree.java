package rungbook.pack;

import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.HighestVoltages;
import rungbook.tree.Tree;

/**
 * A tree that is packed together with others.
 *
 * @param voltages what can be read at its checks, as far as it is known
 * @param digest of its pack of the same edition, 64 hexadecimal digits
 */
public record PackedTree(Tree tree, HighestVoltages voltages, Edition edition, String digest) {

  /** @param material what its pack is made of besides it */
  public static PackedTree of(Tree tree, HighestVoltages voltages, PackInput material, Edition edition) {
    return new PackedTree(tree, voltages, edition, Pack.of(tree, voltages, material, edition).digest());
  }
}
