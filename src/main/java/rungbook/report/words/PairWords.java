package rungbook.report.words;

import java.util.ArrayList;
import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.PairOutcome;
import rungbook.proof.report.Proof;
import rungbook.text.English;

/** What becomes of two faults that come together, in words. */
public final class PairWords {

  private PairWords() {}

  /** {@code found 100 %; after the first repair 80 % noticed, 20 % not}. */
  public static String of(PairOutcome pair) {
    List<String> words = new ArrayList<>();
    add("one found", pair.ends().found(), words);
    add("taken for another", pair.ends().mistaken(), words);
    add("called healthy", pair.ends().healthy(), words);
    add("referred", pair.ends().referred(), words);
    add("handed on", pair.ends().handedOn(), words);
    add("no answer fits", pair.ends().nothing(), words);
    add("both repaired and proved", pair.both(), words);
    add("second noticed after the first repair", pair.noticed(), words);
    add("second not noticed", pair.missed(), words);
    return String.join(", ", words);
  }

  /** How many faults give the complaint: {@code 12 of 60 faults and 2 of 5 pairs}. */
  public static String given(Proof proof) {
    List<Complaint.Shown> all = proof.complaint().faults();
    int pairs = (int) all.stream().filter(Complaint.Shown::isPair).count();
    return (proof.outcomes().size() - 1 - proof.pairs().size()) + " of "
        + English.counted(all.size() - pairs, "fault")
        + (pairs == 0 ? "" : " and " + proof.pairs().size() + " of " + English.counted(pairs, "pair"));
  }

  /** {@code , 2 pairs of faults}; empty where no faults come together. */
  public static String andPairs(Proof proof) {
    return proof.pairs().isEmpty() ? "" : ", " + English.counted(proof.pairs().size(), "pair") + " of faults";
  }

  private static void add(String what, double share, List<String> words) {
    if (share > Share.ROUNDING) {
      words.add(what + " " + ReportNumbers.percent(share));
    }
  }
}
