package rungbook.web.views;

import java.util.Comparator;
import java.util.stream.Stream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.Proof;
import rungbook.text.English;
import rungbook.tree.Step;

/** Which systems a limit sends the wrong way, in sentences. */
public final class Misroutes {
  private Misroutes() {}

  /** Healthy systems first, then faults by likelihood. */
  public static Stream<String> of(Proof proof, Proof.Limit limit) {
    return limit.misrouted().stream().filter(one -> one.healthy() || Share.isReported(one.share()))
        .sorted(
            Comparator.comparing(Proof.Misrouted::healthy).thenComparingDouble(Proof.Misrouted::likelihood).reversed())
        .map(one -> sentence(proof, limit, one));
  }

  /** Healthy systems that end at a finding which names a fault, with the supply of one of them. */
  public static Stream<String> falseAlarms(Proof proof) {
    return proof.falseAlarms().stream()
        .map(one -> English.capital(one.shown()) + " of healthy systems would get a fault at `" + one.title()
            + "`: with " + one.circumstances());
  }

  private static String sentence(Proof proof, Proof.Limit limit, Proof.Misrouted one) {
    var check = (Step.MeterCheck) proof.tree().steps().get(limit.step());
    var digit = proof.tree().meter().scale(check.quantity()).orElseThrow().digit();
    var way = check.ways().get(one.below() ? limit.upperWay() : limit.lowerWay());
    return who(one) + ": with " + one.circumstances() + " the reading is "
        + ReportNumbers.reading(one.reading(), digit, check.quantity())
        + ", and the way taken can be `" + way.written() + "`";
  }

  private static String who(Proof.Misrouted one) {
    var share = one.share() == 0 ? "In the worst case a few" : ReportNumbers.percent(one.share());
    if (one.healthy()) {
      return share + " of healthy systems would be sent the wrong way";
    }
    return share + " of systems with `" + one.fault() + "` would be sent the wrong way";
  }
}
