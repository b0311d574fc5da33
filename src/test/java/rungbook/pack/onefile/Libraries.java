package rungbook.pack.onefile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rungbook.library.StarterLibrary;
import rungbook.pack.PackedTree;
import rungbook.pack.Samples;
import rungbook.pack.page.Edition;
import rungbook.tree.Tree;

/** Files of the starter library. */
final class Libraries {

  private static LibraryFile all;

  private Libraries() {}

  /** All starter trees, made once for all tests. */
  static synchronized LibraryFile starters() {
    all = all == null ? of(trees()) : all;
    return all;
  }

  static List<Tree> trees() {
    return Samples.STARTER.trees().stream().map(tree -> tree.tree()).toList();
  }

  static LibraryFile of(List<Tree> trees) {
    return LibraryFile.of(trees.stream().map(tree -> packed(tree, Edition.draft())).toList(), List.of(),
        Samples.MATERIAL);
  }

  static PackedTree packed(Tree tree, Edition edition) {
    return new PackedTree(tree, Samples.facts(tree.id()), edition, Samples.starter(tree.id()).digest());
  }

  static Tree tree(String id) {
    return StarterLibrary.tree(id);
  }

  static String text(LibraryFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
