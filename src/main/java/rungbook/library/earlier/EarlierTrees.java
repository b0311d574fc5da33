package rungbook.library.earlier;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.proof.comparison.Against;
import rungbook.proof.comparison.ProofComparison;
import rungbook.proof.report.Proof;
import rungbook.source.Source;
import rungbook.source.Wording;
import rungbook.tree.Tree;

/** Trees as they were, each proved in the library that it was in, or in the library of today. */
public final class EarlierTrees {

  private final LibraryText text;
  private final Map<String, CompiledTree> trees = new LinkedHashMap<>();

  private EarlierTrees(LibraryText text) {
    this.text = text;
    LibraryCompiler.trees(text, LibraryCompiler.sharedAsNeeded(text), id -> true)
        .forEachOrdered(tree -> trees.put(tree.tree().id(), tree));
  }

  /** An earlier copy of the whole library. */
  public static EarlierTrees of(LibraryText copy) {
    return new EarlierTrees(copy);
  }

  /**
   * The library of today with an earlier text of one tree.
   *
   * @param path of the tree in the library
   */
  public static EarlierTrees of(LibraryText today, String path, String earlier) {
    var texts = new TreeMap<>(today.texts());
    texts.put(path, new Source(path, earlier));
    return new EarlierTrees(new LibraryText(texts, today.pictures(), today.unreadable()));
  }

  /**
   * Proves the earlier text of the same tree, and compares.
   *
   * @param name of the earlier text, in words
   */
  public Against compare(Proof now, String name, Prover prover) {
    CompiledTree earlier = trees.get(now.tree().id());
    if (earlier == null) {
      return Against.not(name, "it has no `" + now.tree().id() + ".md`");
    }
    return compare(prover.prove(earlier.tree(), text, this::tree), now, name);
  }

  private Optional<Tree> tree(String id) {
    return Optional.ofNullable(trees.get(id)).map(CompiledTree::tree);
  }

  /** @param before the earlier text's result */
  public static Against compare(Proving.Result before, Proof now, String name) {
    return before.proved().map(proof -> Against.of(name, ProofComparison.of(proof, now)))
        .orElseGet(() -> Against.not(name, Wording.of(before.problems().get(0)).sentence(before.problems().get(0))));
  }
}
