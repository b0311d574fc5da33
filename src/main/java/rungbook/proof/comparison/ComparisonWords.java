package rungbook.proof.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.comparison.ProofComparison.CaseChange;
import rungbook.proof.comparison.ProofComparison.EndShare;
import rungbook.proof.comparison.ProofComparison.Figures;
import rungbook.text.Decimals;
import rungbook.text.English;

/** A comparison in words. */
public final class ComparisonWords {

  private ComparisonWords() {}

  /** {@code 12 faults end elsewhere than before; 3 of them are worse}. */
  public static String summary(ProofComparison comparison) {
    if (comparison.changes().isEmpty()) {
      return "every fault ends where it did";
    }
    int faults = comparison.faults();
    String counted = faults == 0 ? "healthy systems end elsewhere than before"
        : English.counted(faults, "fault") + (faults == 1 ? " ends" : " end") + " elsewhere than before";
    String healthy = faults > 0 && faults < comparison.changes().size() ? ", and so do healthy systems" : "";
    int worse = comparison.worse();
    return counted + healthy + (worse == 0 ? "" : "; " + (worse == comparison.changes().size() ? "all of this"
        : worse + " of these") + (worse == 1 || worse == comparison.changes().size() ? " is worse" : " are worse"));
  }

  /** {@code control fuse open: ended at Fuse, now at Board}. */
  public static String of(CaseChange change) {
    String name = change.isHealthy() ? "healthy systems" : change.name();
    if (change.before().isEmpty()) {
      return name + ": not followed before, now ends at " + ends(change.now(), List.of());
    }
    return name + ": ended at " + ends(change.before(), change.now())
        + (change.now().isEmpty() ? ", no longer followed" : ", now at " + ends(change.now(), change.before()));
  }

  /** A share is only said where there are several. */
  private static String ends(List<EndShare> ends, List<EndShare> others) {
    List<EndShare> shown = ends.stream().filter(end -> Share.isReported(end.share())).toList();
    return shown.stream().map(end -> title(end, others)
        + (shown.size() == 1 ? "" : " (" + ReportNumbers.percent(end.share()) + ")")).collect(Collectors.joining(", "));
  }

  /** One title for two conclusions would not tell them apart. */
  private static String title(EndShare end, List<EndShare> others) {
    boolean isAmbiguous = others.stream()
        .anyMatch(other -> other.title().equals(end.title()) && !other.names().equals(end.names()));
    return isAmbiguous ? end.title() + (end.names().isEmpty() ? "" : ", which says " + end.names()) : end.title();
  }

  /** The figures that are no longer what they were. */
  public static List<String> figures(ProofComparison comparison) {
    Figures before = comparison.before();
    Figures now = comparison.now();
    var lines = new ArrayList<String>();
    add(lines, "named faults", Integer.toString(before.named()), Integer.toString(now.named()));
    add(lines, "detected", ReportNumbers.percent(before.detected()), ReportNumbers.percent(now.detected()));
    add(lines, "healthy systems that get a fault", ReportNumbers.percent(before.falseAlarms()),
        ReportNumbers.percent(now.falseAlarms()));
    add(lines, "checks on average", Decimals.rounded(before.checks(), 1), Decimals.rounded(now.checks(), 1));
    add(lines, "minutes on average", Decimals.rounded(before.minutes(), 0), Decimals.rounded(now.minutes(), 0));
    return List.copyOf(lines);
  }

  private static void add(List<String> lines, String what, String before, String now) {
    if (!before.equals(now)) {
      lines.add(what + ": " + before + " before, now " + now);
    }
  }
}
