package rungbook.proof.advice;

import java.util.Optional;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.Proof;
import rungbook.source.Wording;
import rungbook.text.English;
import rungbook.tree.Step;

/**
 * A recommendation in the trade's words. Words of the tree and of its system are in backticks.
 *
 * @param what to do, a sentence
 * @param why with one installation that shows it, in whole sentences
 */
public record AdviceText(String what, String why) {

  public static AdviceText of(Recommendation one) {
    if (one instanceof Recommendation.MoveLimit move) {
      return new AdviceText(move(move), example(move.example()) + " " + room(move.check(), move.limit()));
    }
    if (one instanceof Recommendation.CheckAnotherWay check) {
      return new AdviceText(checkAnotherWay(check), example(check.example()) + " " + overlap(check.limit()));
    }
    if (one instanceof Recommendation.ClearGoodUnits clear) {
      return new AdviceText("Keep good units away from `" + clear.alarm().title() + "`.", alarm(clear.alarm()));
    }
    return one instanceof Recommendation.FindFault find
        ? new AdviceText("Send `" + find.fault().name() + "` to the finding that names it.", missed(find))
        : correct((Recommendation.Correct) one);
  }

  /** How many more problems may go away with the first ones; empty if none. */
  public static Optional<String> behind(Advice advice) {
    return advice.behind() == 0 ? Optional.empty()
        : Optional.of("Then prove again. " + English.counted(advice.behind(), "more problem")
            + " may go away when the limits above are moved.");
  }

  private static String move(Recommendation.MoveLimit move) {
    String unit = move.check().quantity().unit();
    return "Move " + ReportNumbers.number(move.limit().at()) + " to "
        + ReportNumbers.number(move.limit().better().orElseThrow()) + " " + unit + " at `" + move.check().title()
        + "`.";
  }

  private static String checkAnotherWay(Recommendation.CheckAnotherWay check) {
    return "Add another check at `" + check.check().title() + "`: no limit works in place of "
        + check.limit().words(check.check().quantity().unit()) + ".";
  }

  /** {@code In a house with 115 V a good unit reads 24.6 V here; you send it to …}. */
  private static String example(Recommendation.Example example) {
    Proof.Misrouted one = example.misrouted();
    return "In a house with " + one.circumstances() + ", " + who(one) + " reads " + example.reading()
        + " here. The answer `" + example.taken() + "` can take it, and you send it to `" + example.sentTo() + "`. "
        + howMany(one);
  }

  private static String who(Proof.Misrouted one) {
    return one.healthy() ? "a good unit" : "a unit with `" + one.fault() + "`";
  }

  private static String howMany(Proof.Misrouted one) {
    String units = one.healthy() ? "good units" : "units with this fault";
    return one.share() == 0 ? "Only " + units + " at the ends of all tolerances go that way."
        : ReportNumbers.percent(one.share()) + " of " + units + " go that way.";
  }

  private static String room(Step.MeterCheck check, Proof.Limit limit) {
    return "Any limit " + Bounds.words(limit, check.quantity().unit()) + " works.";
  }

  private static String overlap(Proof.Limit limit) {
    return limit.separable() ? "This meter cannot tell the two sides apart." : "The readings of the two sides overlap.";
  }

  private static String alarm(Proof.FalseAlarm alarm) {
    String share = alarm.share() == 0 ? "Only good units at the ends of all tolerances end there."
        : ReportNumbers.percent(alarm.share()) + " of good units end there.";
    return "In a house with " + alarm.circumstances() + ", a good unit ends there, and you replace a good part. "
        + share;
  }

  private static String missed(Recommendation.FindFault find) {
    String where = find.instead().isEmpty() ? "" : " It ends at " + String.join("; ", find.instead()) + ".";
    return "A finding names this fault, and no unit with it gets there." + where
        + " Change the check that sends it away, or take it off the finding.";
  }

  private static AdviceText correct(Recommendation.Correct correct) {
    Wording wording = Wording.of(correct.problem());
    return new AdviceText(sentence(wording.hint(correct.problem())), sentence(wording.sentence(correct.problem())));
  }

  private static String sentence(String words) {
    return English.capital(words) + ".";
  }
}
