package rungbook.pack.book;

import java.util.List;
import rungbook.pack.PackedTree;
import rungbook.pack.page.TreeText;
import rungbook.tree.Tree;

/**
 * A tree in the book.
 *
 * @param file its name in the book's folder
 * @param content its XHTML, between header and footer
 */
record BookChapter(String file, PackedTree from, String content) {

  String title() {
    return Xhtml.characters(tree().title());
  }

  String complaint() {
    return Xhtml.characters(tree().complaint());
  }

  private Tree tree() {
    return from.tree();
  }

  List<TreeText.Entry> steps() {
    return TreeText.contents(tree());
  }

  String revision() {
    return from.edition().revision().map(revision -> "Revision " + revision).orElse("Draft");
  }

  boolean hasDrawings() {
    return content.contains("<svg ");
  }
}
