package rungbook.pack.book;

import java.util.Map;
import java.util.Optional;
import rungbook.pack.page.Html;
import rungbook.pack.page.Medium;

/**
 * A chapter: other trees are other chapters, and pictures are files of the book.
 *
 * @param files the file of each tree in the book
 */
record ChapterMedium(String digest, Map<String, String> files, BookPictures pictures) implements Medium {

  /** The title page says it. */
  @Override
  public boolean folds() {
    return false;
  }

  @Override
  public void checking(Html html) {
    // nothing more here
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
  public Optional<String> picture(String path) {
    return pictures.address(path);
  }
}
