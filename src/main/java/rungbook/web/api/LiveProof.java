package rungbook.web.api;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rungbook.proof.Proving;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.LimitFix;
import rungbook.proof.report.Proof;
import rungbook.source.Wording;
import rungbook.tree.Step;
import rungbook.web.views.EditView;
import rungbook.web.views.Misroutes;

/**
 * A proof as an editor shows it beside the text.
 *
 * @param unproved why there is none; empty where there is
 * @param named how many faults the tree names; {@code found} of them are always found
 * @param missed the others, the least found first, each with how often it is found
 * @param condemned which healthy systems end at a finding that names a fault, a sentence each
 * @param limits those that send somebody the wrong way
 */
record LiveProof(String unproved, int named, int found, List<String> missed, List<String> condemned,
    List<Limit> limits) {

  private static final int MOST_TOLD = 3;

  /**
   * @param from offset in the text, in UTF-16 units
   * @param says whom the limit sends the wrong way, a sentence each
   * @param better a better value with its unit; empty when no value works
   */
  record Limit(String check, String at, int from, List<String> says, String better, List<EditView> edits) {}

  static LiveProof of(Proving.Result result) {
    return result.proved().map(LiveProof::of)
        .orElseGet(() -> new LiveProof(Wording.of(result.problems().get(0)).sentence(result.problems().get(0)), 0, 0,
            List.of(), List.of(), List.of()));
  }

  private static LiveProof of(Proof proof) {
    var claimed = proof.outcomes().stream().filter(Proof.Outcome::claimed).toList();
    var missed = claimed.stream().filter(outcome -> !Share.isAll(outcome.found()))
        .sorted(Comparator.comparingDouble(Proof.Outcome::found))
        .map(outcome -> missed(proof, outcome)).toList();
    return new LiveProof("", claimed.size(), claimed.size() - missed.size(), missed,
        Misroutes.falseAlarms(proof).toList(), limits(proof));
  }

  private static String missed(Proof proof, Proof.Outcome outcome) {
    var ends = proof.endings().stream().filter(ending -> ending.arrived().stream()
        .anyMatch(one -> one.fault().equals(outcome.name()) && !one.named() && one.share() > 0))
        .map(Proof.Ending::title).toList();
    return outcome.name()
        + (outcome.found() == 0 ? " is missed"
            : " is found in " + ReportNumbers.percent(outcome.found()) + " of installations")
        + (ends.isEmpty() ? "" : "; it ends at `" + String.join("`, `", ends) + "`");
  }

  private static List<Limit> limits(Proof proof) {
    var limits = new ArrayList<Limit>();
    for (var check : proof.checks()) {
      for (var limit : check.limits()) {
        var wrong = Misroutes.of(proof, limit).limit(MOST_TOLD).toList();
        if (!wrong.isEmpty()) {
          limits.add(limit(proof, check, limit, wrong));
        }
      }
    }
    return limits;
  }

  private static Limit limit(Proof proof, Proof.Check check, Proof.Limit limit, List<String> wrong) {
    var step = (Step.MeterCheck) proof.tree().steps().get(check.step());
    var own = step.source() == proof.tree().source();
    var edits = LimitFix.fix(limit, step).filter(fix -> own).map(EditView::of).orElse(List.of());
    var unit = " " + step.quantity().unit();
    return new Limit(check.title(), ReportNumbers.number(limit.at()) + unit,
        own ? step.ways().get(limit.upperWay()).answerSpan().start() : 0, wrong,
        edits.isEmpty() ? "" : ReportNumbers.number(limit.better().orElseThrow()) + unit, edits);
  }
}
