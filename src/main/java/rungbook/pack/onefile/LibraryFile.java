package rungbook.pack.onefile;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.pack.LeftOut;
import rungbook.pack.PackedTree;
import rungbook.pack.page.Digest;
import rungbook.pack.page.PackInput;
import rungbook.pack.page.PageForm;
import rungbook.tree.Tree;

/**
 * Trees as one HTML file.
 *
 * @param digest 64 hexadecimal digits
 * @param bytes the file; do not modify
 */
public record LibraryFile(String digest, byte[] bytes) {

  /**
   * @param trees sound ones
   * @param leftOut those that have errors, to be named on the first page
   */
  public static LibraryFile of(List<PackedTree> trees, List<LeftOut> leftOut, PackInput material) {
    List<PackedTree> sorted = trees.stream().sorted(Comparator.comparing(tree -> tree.tree().id())).toList();
    ShortAnchors anchors = new ShortAnchors(sorted.stream().map(PackedTree::tree).toList());
    String page = new LibraryDocument(sorted, anchors, titles(sorted), material).of(leftOut);
    PageForm blank = PageForm.of(page.getBytes(StandardCharsets.UTF_8)).orElseThrow();
    String digest = blank.computed();
    return new LibraryFile(digest, blank.with(digest));
  }

  private static Map<String, String> titles(List<PackedTree> trees) {
    Map<String, String> titles = new LinkedHashMap<>();
    trees.stream().map(PackedTree::tree).forEach((Tree tree) -> titles.put(tree.id(), tree.title()));
    return titles;
  }

  /** The start of the digest in groups, as people compare it. */
  public String shortDigest() {
    return Digest.grouped(digest);
  }
}
