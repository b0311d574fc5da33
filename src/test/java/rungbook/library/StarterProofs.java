package rungbook.library;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rungbook.circuit.network.Samples;
import rungbook.library.solving.Prover;
import rungbook.proof.report.Proof;

/**
 * The proofs of the starter trees, each made once for all tests: with the usual draws, and with few on the circuits
 * that the examples use too. With {@code -Drungbook.short=true} the usual draws are the few.
 */
public final class StarterProofs {

  /** So few draws that the corners of the tolerances matter, and the tests stay quick. */
  public static final int FEW = 16;

  static final int DRAWN = ShortRun.IS ? FEW : Samples.USUAL;

  private static final Prover OF_FEW = Example.PROVER;
  private static final Prover PROVER = DRAWN == FEW ? OF_FEW : new Prover(DRAWN);
  private static final Map<Asked, Proof> PROVED = new ConcurrentHashMap<>();

  private record Asked(Prover prover, String id) {}

  private StarterProofs() {}

  public static List<String> ids() {
    return StarterLibrary.LIBRARY.trees().stream().map(tree -> tree.tree().id()).toList();
  }

  static Proof of(String id) {
    return PROVED.computeIfAbsent(new Asked(PROVER, id), any -> prove(StarterLibrary.LIBRARY, id));
  }

  public static Proof ofFewDraws(String id) {
    return PROVED.computeIfAbsent(new Asked(OF_FEW, id), any -> prove(OF_FEW, StarterLibrary.LIBRARY, id));
  }

  /** Proves a tree of a changed library, on the circuits that are solved already. */
  static Proof prove(Library library, String id) {
    return prove(PROVER, library, id);
  }

  static Proof prove(Prover prover, Library library, String id) {
    return prover.prove(library.tree(id).orElseThrow().tree(), library.text(),
        other -> library.tree(other).map(CompiledTree::tree)).proved().orElseThrow();
  }
}
