package rungbook.report;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Proof;

/** What a tree does in one variant of its system, in words. */
public final class ProofVariants {

  public static final String NOT_PROVED = "not proved: the tree says that it is not for this variant";

  private static final int MOST_NAMED = 6;

  private ProofVariants() {}

  public static String name(Proof.InVariant variant) {
    return variant.name().isEmpty() ? "(base)" : variant.name();
  }

  public static String words(Proof.InVariant variant) {
    String alarms = variant.falseAlarmShare() == 0 ? ""
        : "; " + ReportNumbers.percent(variant.falseAlarmShare()) + " of healthy systems get a fault";
    return detected(variant) + alarms + worse(variant);
  }

  /** Of nothing, no share is detected: a percentage would read as a failure of the tree. */
  private static String detected(Proof.InVariant variant) {
    if (variant.faults() == 0) {
      return "no fault gives this complaint";
    }
    return (variant.named() == 0 ? "no fault that a finding names gives this complaint"
        : "detected " + ReportNumbers.percent(variant.detected()))
        + ", mistaken " + ReportNumbers.percent(variant.mistaken());
  }

  private static String worse(Proof.InVariant variant) {
    List<String> worse = variant.changed().stream()
        .filter(one -> one.isWorse() && (one.claimed() || one.ends().mistaken() > 0))
        .map(one -> one.fault() + " " + where(one)).toList();
    String first = worse.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    String more = worse.size() <= MOST_NAMED ? "" : " and " + (worse.size() - MOST_NAMED) + " more";
    return worse.isEmpty() ? "" : ": " + first + more;
  }

  private static String where(Proof.ChangedFault fault) {
    return fault.ends().mistaken() > 0 ? "(mistaken " + ReportNumbers.percent(fault.ends().mistaken()) + ")"
        : "(found " + ReportNumbers.percent(fault.ends().found()) + ")";
  }
}
