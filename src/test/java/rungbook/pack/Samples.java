package rungbook.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import rungbook.library.Compiler;
import rungbook.library.Folder;
import rungbook.library.Library;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.TreeReader;

/** Trees to pack: the starter library's own, and small ones written in a test. */
final class Samples {

  static final Library STARTER = starter();
  static final Material MATERIAL = new Material(STARTER.shared(), STARTER.text().pictures());

  private Samples() {}

  private static Library starter() {
    try {
      return Compiler.compile(Folder.read(Path.of("")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Pack starter(String id) {
    return Pack.of(STARTER.tree(id).orElseThrow().tree(), MATERIAL, Edition.draft());
  }

  static List<Pack> starters() {
    return STARTER.trees().stream().map(tree -> Pack.of(tree.tree(), MATERIAL, Edition.draft())).toList();
  }

  static Tree tree(String text) {
    return TreeReader.read("sample", DocumentReader.read(new Source("trees/sample.md", text)), STARTER.shared()).tree();
  }

  static Pack pack(String text) {
    return Pack.of(tree(text), MATERIAL, Edition.draft());
  }

  static Pack pack(String text, Map<String, byte[]> pictures) {
    return Pack.of(tree(text), new Material(Shared.none(), pictures), Edition.draft());
  }
}
