package rungbook.pack.book;

import java.util.Map;
import java.util.Optional;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.pack.page.Edition;
import rungbook.pack.page.Html;
import rungbook.pack.page.Medium;
import rungbook.pack.page.TitleBlock;
import rungbook.system.SystemVariants;
import rungbook.tree.Tree;

/**
 * A chapter: other trees are other chapters, and pictures are files of the book.
 *
 * @param files the file of each tree in the book
 */
record ChapterMedium(String digest, Map<String, String> files, BookPictures pictures) implements Medium {

  @Override
  public boolean isAlone() {
    return true;
  }

  @Override
  public Repeated repeated() {
    return Repeated.OPEN;
  }

  /** How to check it, the title page says. */
  @Override
  public void about(Html html, Tree tree, Edition edition) {
    TitleBlock.of(html, tree, edition, digest);
  }

  @Override
  public Optional<String> address(String tree, Optional<String> step) {
    return Optional.ofNullable(files.get(tree)).map(file -> file + step.map(id -> "#" + id).orElse(""));
  }

  @Override
  public String whereabouts(String tree) {
    return files.containsKey(tree) ? "Another tree, in this book" : "Another tree, which is not in this book: " + tree;
  }

  @Override
  public CircuitPictures circuit(SystemVariants systems) {
    return CircuitPictures.whole(systems, ":c");
  }

  @Override
  public Optional<String> picture(String path) {
    return pictures.address(path);
  }
}
