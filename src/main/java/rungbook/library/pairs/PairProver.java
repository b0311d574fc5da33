package rungbook.library.pairs;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rungbook.library.LibraryText;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.pairs.EveryPairPropagation;
import rungbook.proof.pairs.PairBounds;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.OtherTrees;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Proof;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.reader.VariantsReader;
import rungbook.system.reader.WalkTimesReader;

/** Follows every pair of faults through trees that are proved, the trees of one system together. */
public final class PairProver {

  private PairProver() {}

  /**
   * What each tree does with every two faults of the base of its system.
   *
   * @param others the other trees of the library, by id
   */
  public static IdentityHashMap<Proof, EveryPair> prove(List<Proof> proofs, LibraryText text, OtherTrees others,
      PairBounds bounds) {
    Map<String, List<Proof>> bySystem = new LinkedHashMap<>();
    proofs.forEach(proof -> proof.tree().system()
        .ifPresent(words -> bySystem.computeIfAbsent(words.id(), id -> new ArrayList<>()).add(proof)));
    var found = new IdentityHashMap<Proof, EveryPair>();
    bySystem.forEach((id, ofSystem) -> {
      Source source = Objects.requireNonNull(text.in("shared/systems/").get(id), "a tree that is proved has a system");
      List<EveryPair> all = prove(id, source, ofSystem, others, bounds);
      for (int i = 0; i < all.size(); i++) {
        found.put(ofSystem.get(i), all.get(i));
      }
    });
    return found;
  }

  private static List<EveryPair> prove(String id, Source source, List<Proof> proofs, OtherTrees others,
      PairBounds bounds) {
    Document document = DocumentReader.read(source);
    ControlSystem base = VariantsReader.systems(id, document).base();
    return EveryPairPropagation.of(base, WalkTimesReader.read(document), proofs, others, Budget.inForce(), bounds);
  }
}
