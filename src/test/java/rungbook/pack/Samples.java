package rungbook.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.StarterLibrary;
import rungbook.library.practice.PracticePages;
import rungbook.markdown.DocumentReader;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.pack.practice.PracticePage;
import rungbook.proof.CircuitFacts;
import rungbook.source.Source;
import rungbook.tree.SingleTree;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** Trees to pack: the starter library's own, and small ones written in a test. */
public final class Samples {

  public static final Library STARTER = StarterLibrary.LIBRARY;
  public static final PackInput MATERIAL = new PackInput(STARTER.shared(), STARTER.text().pictures());

  private static final Map<String, Pack> PACKS = new ConcurrentHashMap<>();
  private static final Map<String, CircuitFacts> FACTS = new ConcurrentHashMap<>();

  private Samples() {}

  /** A starter tree's pack, made once for all tests. */
  public static Pack starter(String id) {
    return PACKS.computeIfAbsent(id,
        any -> Pack.of(StarterLibrary.tree(id), facts(id), MATERIAL, Edition.draft()));
  }

  static Pack madeAnew(String id) {
    return pack(StarterLibrary.tree(id), Edition.draft());
  }

  /** What the circuit says of a starter tree, found once for all tests. */
  public static CircuitFacts facts(String id) {
    return FACTS.computeIfAbsent(id, any -> StarterLibrary.FACTS.of(StarterLibrary.tree(id), STARTER.text()));
  }

  static List<Pack> starters() {
    return STARTER.trees().stream().map(tree -> starter(tree.tree().id())).toList();
  }

  /** The starter library's practice pages, made once for all tests. */
  static List<PracticePage> practice() {
    return Practice.PAGES;
  }

  /** Made when it is first asked for. */
  private static final class Practice {

    static final List<PracticePage> PAGES = PracticePages.of(
        STARTER.trees().stream().map(CompiledTree::tree).toList(), STARTER.shared(), STARTER.text());
  }

  /** With what is known of the starter library's circuits. */
  static Pack pack(Tree tree, Edition edition) {
    return Pack.of(tree, StarterLibrary.FACTS.of(tree, STARTER.text()), MATERIAL, edition);
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
    return Pack.of(tree(text), CircuitFacts.unknown(), material, Edition.draft());
  }

  static String text(PackFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
