package rungbook.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rungbook.circuit.network.Samples;
import rungbook.proof.report.Proof;

/** The starter library and the proofs of its trees with the usual samples, each made once for all tests. */
public final class StarterProofs {

  static final Library LIBRARY = library();

  private static final Prover PROVER = new Prover(Samples.USUAL);
  private static final Map<String, Proof> PROVED = new ConcurrentHashMap<>();

  private StarterProofs() {}

  public static List<String> ids() {
    return LIBRARY.trees().stream().map(tree -> tree.tree().id()).toList();
  }

  public static Proof of(String id) {
    return PROVED.computeIfAbsent(id, any -> prove(LIBRARY, id));
  }

  /** Proves a tree of a changed library, on the circuits that are solved already. */
  static Proof prove(Library library, String id) {
    return prove(PROVER, library, id);
  }

  static Proof prove(Prover prover, Library library, String id) {
    return prover.prove(library.tree(id).orElseThrow().tree(), library.text(),
        other -> library.tree(other).map(CompiledTree::tree)).proved().orElseThrow();
  }

  private static Library library() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of(".")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
