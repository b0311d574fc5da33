package rungbook.proof.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.proof.report.Proof;
import rungbook.system.Vocabulary;

/** What the trees of a library find, system by system. */
public final class LibraryCoverage {

  private LibraryCoverage() {}

  /** @param proofs of trees of one library, in its order */
  public static List<SystemCoverage> of(List<Proof> proofs) {
    Map<String, List<Proof>> bySystem = new LinkedHashMap<>();
    proofs.forEach(proof -> proof.tree().system().map(Vocabulary::id)
        .ifPresent(system -> bySystem.computeIfAbsent(system, any -> new ArrayList<>()).add(proof)));
    return bySystem.entrySet().stream().map(one -> SystemCoverage.of(one.getKey(), one.getValue())).toList();
  }
}
