package rungbook.proof.advice;

import java.util.List;
import java.util.Optional;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.system.Vocabulary;
import rungbook.text.English;

/** The state of a tree in a line that travels with it: what it was proved on, and how much it finds. */
public final class ProofSummary {

  private ProofSummary() {}

  /**
   * @param checked the problems of the check that the text does not silence
   * @param proof empty if the tree cannot be proved
   * @param shown the problems of the proof that the text does not silence
   */
  public static String words(List<Problem> checked, Optional<Proof> proof, List<Problem> shown) {
    TreeState state = TreeState.of(checked, proof.map(one -> Advice.of(one, shown)));
    return state.words() + proof.map(one -> " " + on(one) + found(one)).orElse("");
  }

  private static String on(Proof proof) {
    String system = proof.tree().system().map(Vocabulary::title).orElse("");
    int variants = proof.variants().size() - 1;
    return "(on " + system + (variants > 0 ? " and " + English.counted(variants, "variant") + " of it" : "");
  }

  /** Over the faults by likelihood, through all trees that take over. */
  private static String found(Proof proof) {
    double all = 0;
    double found = 0;
    for (int i = 1; i < proof.outcomes().size(); i++) {
      double likelihood = proof.outcomes().get(i).likelihood();
      all += likelihood;
      found += likelihood * proof.journeys().get(i).share(Journey.Fate.FOUND);
    }
    String of = proof.complaint().symptoms().isPresent() ? " of these calls" : " of the system's faults";
    return all == 0 ? ")" : "; finds " + ReportNumbers.percent(found / all) + of + ")";
  }
}
