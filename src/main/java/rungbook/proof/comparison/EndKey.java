package rungbook.proof.comparison;

import java.util.Set;
import java.util.stream.Collectors;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Proof;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * What makes two ends the same in two texts of a tree. A finding is what it concludes, whatever its heading; any other
 * end is its title.
 *
 * @param faults that a finding names
 */
record EndKey(String kind, String words, Set<String> faults) {

  static EndKey of(Tree tree, Proof.Ending ending) {
    if (ending.end() instanceof End.HandedOn on) {
      return new EndKey("tree", on.tree(), Set.of());
    }
    if (ending.end() instanceof End.Finding at && tree.steps().get(at.step()) instanceof Step.Finding finding) {
      return of(finding);
    }
    return new EndKey(ending.end() instanceof End.Stuck ? "stuck" : "end", ending.title(), Set.of());
  }

  private static EndKey of(Step.Finding finding) {
    String words = finding.healthy() ? "healthy" : finding.refer().map(NameRef::key).orElse("");
    return new EndKey("finding", words, finding.faults().stream().map(NameRef::key).collect(Collectors.toSet()));
  }

  /** What a finding concludes, in words; empty for any other end. */
  String concludes(Proof.Ending ending) {
    return !kind.equals("finding") ? "" : faults.isEmpty() ? words : String.join(", ", ending.named());
  }
}
