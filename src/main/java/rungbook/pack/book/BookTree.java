package rungbook.pack.book;

import rungbook.pack.Pack;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.HighestVoltages;
import rungbook.tree.Tree;

/**
 * A tree that becomes a chapter.
 *
 * @param voltages what can be read at its checks, as far as it is known
 * @param digest of its pack of the same edition, 64 hexadecimal digits
 */
public record BookTree(Tree tree, HighestVoltages voltages, Edition edition, String digest) {

  /** @param material what its pack is made of besides it */
  public static BookTree of(Tree tree, HighestVoltages voltages, PackInput material, Edition edition) {
    return new BookTree(tree, voltages, edition, Pack.of(tree, voltages, material, edition).digest());
  }
}
