package rungbook.report.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.Proof;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Where faults end that come and go, in words. */
public final class IntermittentText {

  private IntermittentText() {}

  /** {@code found 40 %, a wrong part 22 %, called healthy 38 %}. */
  public static String of(EndShares ends) {
    List<String> words = new ArrayList<>();
    add("found", ends.found(), words);
    add("a wrong part", ends.mistaken(), words);
    add("called healthy", ends.healthy(), words);
    add("referred", ends.referred(), words);
    add("handed on", ends.handedOn(), words);
    add("no answer fits", ends.nothing(), words);
    return String.join(", ", words);
  }

  /** {@code float switch open ends at Board, 2 %: it is gone from `R to C at the board` on}. */
  public static String of(IntermittentFaults.WrongPart wrong) {
    return wrong.fault() + " ends at `" + wrong.title() + "`, " + ReportNumbers.percent(wrong.likelihood())
        + ": it is gone from `" + wrong.goneFrom() + "` on";
  }

  /** The checks on a path: {@code Listen: no -> Across the coil: under 20}. */
  public static String checks(Tree tree, Witness.Path path) {
    Set<String> checks = tree.steps().stream().filter(Step.Check.class::isInstance).map(Step::title)
        .collect(Collectors.toSet());
    return path.stops().stream().filter(stop -> checks.contains(stop.step()))
        .map(stop -> stop.step() + ": " + stop.answer()).collect(Collectors.joining(" -> "));
  }

  /** {@code by exclusion alone}; empty for a finding that its own abnormal reading shows. */
  public static String mark(Proof proof, int finding) {
    return proof.intermittent().excluded(finding).map(one -> one.words(ReportNumbers.percent(one.share()))).orElse("");
  }

  private static void add(String what, double share, List<String> words) {
    if (share > Share.ROUNDING) {
      words.add(what + " " + ReportNumbers.percent(share));
    }
  }
}
