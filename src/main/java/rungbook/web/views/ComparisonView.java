package rungbook.web.views;

import java.util.List;
import rungbook.proof.comparison.Against;
import rungbook.proof.comparison.ComparisonWords;
import rungbook.proof.comparison.ProofComparison;
import rungbook.text.English;

/**
 * How a proof differs from that of an earlier revision, as a page shows it.
 *
 * @param why it is not compared; empty if it is
 * @param figures those that are no longer what they were
 */
public record ComparisonView(String name, String why, String summary, List<String> figures, List<Change> changes) {

  /** A case that ends elsewhere, in words. */
  public record Change(String words, boolean isWorse) {}

  public static ComparisonView of(Against against) {
    return against.found().map(found -> of(against.name(), found))
        .orElseGet(() -> new ComparisonView(against.name(), against.why(), "", List.of(), List.of()));
  }

  private static ComparisonView of(String name, ProofComparison found) {
    return new ComparisonView(name, "", English.capital(ComparisonWords.summary(found)),
        ComparisonWords.figures(found),
        found.changes().stream().map(one -> new Change(ComparisonWords.of(one), one.isWorse())).toList());
  }

  /** Few enough to show at once. */
  public boolean isBrief() {
    return changes.size() <= 6;
  }
}
