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
import rungbook.library.VoltageFinder;
import rungbook.markdown.DocumentReader;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.HighestVoltages;
import rungbook.source.Source;
import rungbook.tree.SingleTree;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** Trees to pack: the starter library's own, and small ones written in a test. */
public final class Samples {

  public static final Library STARTER = starter();
  static final PackInput MATERIAL = new PackInput(STARTER.shared(), STARTER.text().pictures());

  static final VoltageFinder VOLTAGES = new VoltageFinder();

  private Samples() {}

  private static Library starter() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of("")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Pack starter(String id) {
    return pack(STARTER.tree(id).orElseThrow().tree(), Edition.draft());
  }

  static List<Pack> starters() {
    return STARTER.trees().stream().map(tree -> pack(tree.tree(), Edition.draft())).toList();
  }

  /** With the voltages of the starter library's circuits. */
  static Pack pack(Tree tree, Edition edition) {
    return Pack.of(tree, VOLTAGES.of(tree, STARTER.text()), MATERIAL, edition);
  }

  /** One step of each kind, whatever the starter library becomes. */
  static Pack example() {
    try (var in = Samples.class.getResourceAsStream("/rungbook/pack/example.md")) {
      return pack(tree("example", new String(in.readAllBytes(), StandardCharsets.UTF_8)), Edition.draft());
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
    PackInput material = new PackInput(SingleTree.NOTHING_SHARED, pictures);
    return Pack.of(tree(text), HighestVoltages.unknown(), material, Edition.draft());
  }

  static String text(PackFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
