package rungbook.pack.page;

import java.util.Map;
import java.util.Optional;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.pack.drawing.PictureAddress;
import rungbook.source.PictureKind;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.text.UrlPath;
import rungbook.tree.Tree;

/**
 * A pack: other trees are in files beside it. Pictures are data URIs, for the {@code img} element only: there a
 * picture's own scripts and links are dead.
 *
 * @param pictures by path in the library
 * @param isSolvable whether the circuit of the tree's system can be solved; without that it has no practice page
 */
record PageInFolder(Map<String, byte[]> pictures, boolean isSolvable) implements Medium {

  @Override
  public boolean isAlone() {
    return true;
  }

  @Override
  public Repeated repeated() {
    return Repeated.FOLDED;
  }

  /** The digest is filled in when the whole page is known. */
  @Override
  public void about(Html html, Tree tree, Edition edition) {
    TitleBlock.of(html, tree, edition, Digest.BLANK);
    TitleBlock.checking(html);
    tree.circuit().filter(system -> isSolvable && !system.faults().isEmpty())
        .ifPresent(system -> practice(html, system.vocabulary()));
  }

  private static void practice(Html html, Vocabulary system) {
    String file = FileNames.ofPractice(system.id());
    html.open("p", "class", "checking").text("To practice on this system, with the file in the same folder: ")
        .element("a", file, "href", UrlPath.part(file)).text(".").close("p").line();
  }

  @Override
  public Optional<String> address(String tree, Optional<String> step) {
    return Optional.of(FileNames.address(tree) + step.map(id -> "#" + id).orElse(""));
  }

  @Override
  public String whereabouts(String tree) {
    return "Another tree, in the file " + FileNames.inFolder(tree);
  }

  @Override
  public CircuitPictures circuit(SystemVariants systems) {
    return CircuitPictures.shared(systems, ":c");
  }

  @Override
  public Optional<String> picture(String path) {
    byte[] bytes = pictures.get(path);
    return bytes == null ? Optional.empty()
        : PictureKind.of(path).map(kind -> PictureAddress.of(kind, bytes));
  }
}
