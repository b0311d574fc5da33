package rungbook.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import rungbook.library.Folder;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.markdown.DocumentReader;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.source.Source;
import rungbook.tree.SingleTree;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** Trees to pack: the starter library's own, and small ones written in a test. */
public final class Samples {

  public static final Library STARTER = starter();
  static final PackInput MATERIAL = new PackInput(STARTER.shared(), STARTER.text().pictures());

  private Samples() {}

  private static Library starter() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of("")));
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

  /** One step of each kind, whatever the starter library becomes. */
  static Pack example() {
    try (var in = Samples.class.getResourceAsStream("/rungbook/pack/example.md")) {
      return Pack.of(tree("example", new String(in.readAllBytes(), StandardCharsets.UTF_8)), MATERIAL, Edition.draft());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Tree tree(String text) {
    return tree("sample", text);
  }

  private static Tree tree(String id, String text) {
    return TreeReader.read(id, DocumentReader.read(new Source("trees/" + id + ".md", text)), STARTER.shared()).tree();
  }

  static Pack pack(String text, Map<String, byte[]> pictures) {
    return Pack.of(tree(text), new PackInput(SingleTree.NOTHING_SHARED, pictures), Edition.draft());
  }

  static String text(PackFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
