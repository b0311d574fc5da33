package rungbook.pack.onefile;

import java.util.Map;
import java.util.Optional;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.pack.drawing.PictureAddress;
import rungbook.pack.page.Edition;
import rungbook.pack.page.Html;
import rungbook.pack.page.Medium;
import rungbook.pack.page.TitleBlock;
import rungbook.source.PictureKind;
import rungbook.system.SystemVariants;
import rungbook.tree.Tree;

/**
 * A tree among others in one file: what they name in common is there once, and a hand-over is a link within the file to
 * the step where the other tree is entered.
 *
 * @param digest of the tree's pack, 64 hexadecimal digits
 * @param titles of the trees in the file, by id
 * @param pictures by path in the library
 * @param circuits of the trees so far
 */
record PageInLibrary(String digest, ShortAnchors anchors, Map<String, String> titles, Map<String, byte[]> pictures,
    LibraryCircuits circuits)
    implements Medium {

  @Override
  public boolean isAlone() {
    return false;
  }

  @Override
  public Repeated repeated() {
    return Repeated.LINK;
  }

  @Override
  public void about(Html html, Tree tree, Edition edition) {
    TitleBlock.ofMany(html, tree, edition, digest);
  }

  @Override
  public String anchor(String tree, String place) {
    return anchors.of(tree, place);
  }

  @Override
  public Optional<String> address(String tree, Optional<String> step) {
    String anchor = step.map(id -> anchors.of(tree, id)).orElseGet(() -> anchors.first(tree));
    return anchors.has(tree) ? Optional.of("#" + anchor) : Optional.empty();
  }

  @Override
  public String whereabouts(String tree) {
    return anchors.has(tree) ? "Another tree: " + titles.get(tree) : "Another tree, which is not in this file: " + tree;
  }

  @Override
  public CircuitPictures circuit(SystemVariants systems) {
    return circuits.of(systems);
  }

  @Override
  public Optional<String> picture(String path) {
    byte[] bytes = pictures.get(path);
    return bytes == null ? Optional.empty() : PictureKind.of(path).map(kind -> PictureAddress.of(kind, bytes));
  }
}
