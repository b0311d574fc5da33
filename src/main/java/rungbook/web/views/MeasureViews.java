package rungbook.web.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Proof;

/** The testability figures of a proof, with their names in IEEE 1522 (from memory) and what each counts. */
final class MeasureViews {

  private MeasureViews() {}

  static List<ProofView.Measure> of(Proof proof) {
    var measures = new ArrayList<ProofView.Measure>();
    var claimed = proof.claimed();
    if (claimed.faults() > 0) {
      measures.add(new ProofView.Measure("Fraction of faults detected, named faults", percent(claimed.detected()),
          "Of 100 units with a fault that a finding names, so many end at a finding that names it."));
      measures.add(new ProofView.Measure("Fraction of faults detected, all faults", percent(proof.whole().detected()),
          "The same of 100 units with any fault that " + counted(proof) + "."));
      for (int most = 1; most <= 3; most++) {
        measures.add(isolated(claimed.isolatedTo(most), most));
      }
      measures.add(new ProofView.Measure("Mean ambiguity group size", oneDecimal(claimed.meanGroup()),
          "So many faults are left, on average, at the finding."));
    }
    measures.add(new ProofView.Measure("False alarm rate", percent(proof.falseAlarmShare()),
        "Of 100 good units, so many end at a finding that names a fault."));
    return measures;
  }

  private static String counted(Proof proof) {
    return proof.complaint().symptoms().isPresent() ? "gives the complaint" : "the system has";
  }

  private static ProofView.Measure isolated(double share, int most) {
    return new ProofView.Measure(
        "Fraction of faults isolated to " + (most == 1 ? "one" : most == 2 ? "two or fewer" : "three or fewer"),
        percent(share), "Of 100 detected units, so many end at a finding that leaves "
            + (most == 1 ? "one fault." : "at most " + most + " faults."));
  }

  private static String oneDecimal(double value) {
    return ReportNumbers.number(BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP));
  }

  private static String percent(double share) {
    return ReportNumbers.percent(share).replace(" %", "\u00a0%");
  }
}
