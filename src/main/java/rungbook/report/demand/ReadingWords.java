package rungbook.report.demand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.demand.NoReading;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.Shown;
import rungbook.system.Part;
import rungbook.system.Quantity;
import rungbook.tree.Meter;

/** The sentences about a reading on demand, the same on every screen. */
public final class ReadingWords {

  private static final BigDecimal USUAL_DIGIT = new BigDecimal("0.01");

  private ReadingWords() {}

  /** {@code AC volts, Y at condenser (red) to C at condenser (black)}; {@code temperature rise}. */
  public static String leads(ReadingQuestion question) {
    if (question.stated().isPresent()) {
      return question.measured();
    }
    List<String> leads = question.leads().stream().map(question::words).toList();
    String where = leads.size() > 1 ? leads.get(0) + " (red) to " + leads.get(1) + " (black)"
        : "clamp around the conductor at " + String.join("", leads);
    return leads.isEmpty() ? "" : question.quantity().words() + ", " + where;
  }

  /** {@code thermostat cooling, fan on}. */
  public static String settings(ReadingQuestion question) {
    return question.settings().isEmpty() ? "every control as at the start" : String.join(", ", question.settings());
  }

  /** A reading as the meter's display rounds it, with its unit: {@code 26.4 V}. */
  public static String amount(double reading, ReadingQuestion question) {
    return ReportNumbers.reading(reading, digit(question), question.quantity());
  }

  private static BigDecimal digit(ReadingQuestion question) {
    return question.meter().scale(question.quantity()).map(Meter.Scale::digit).orElse(USUAL_DIGIT);
  }

  /** What the meter's own error adds: {@code the meter may show up to 0.6 V more or less}. */
  public static Optional<String> meterError(Shown.Amounts amounts, ReadingQuestion question) {
    return question.meter().scale(question.quantity()).map(scale -> {
      BigDecimal error = scale.errorAt(BigDecimal.valueOf(amounts.high()));
      return "the meter may show up to "
          + ReportNumbers.number(error.divide(scale.digit(), 0, RoundingMode.CEILING).multiply(scale.digit())) + " "
          + question.quantity().unit() + " more or less";
    });
  }

  /** Whether the highest reading is beyond what the meter can show. */
  public static boolean isBeyondMeter(Shown.Amounts amounts, ReadingQuestion question) {
    return question.meter().scale(question.quantity())
        .filter(scale -> BigDecimal.valueOf(amounts.high()).compareTo(scale.high()) > 0).isPresent();
  }

  /** Why a reading is a stray voltage. */
  public static Optional<String> stray(Shown.Amounts amounts, ReadingQuestion question) {
    return amounts.lowImpedance().map(low -> "a stray voltage: no path of conductors leads from a source to both "
        + "points; it comes through the capacitance between conductors, and falls to "
        + ReportNumbers.reading(low, digit(question), question.quantity()) + " at low impedance");
  }

  /** Why there is no number. */
  public static String nothing(NoReading why, ReadingQuestion question) {
    return switch (why) {
      case FLOATING -> "nothing connects the two points, so the reading says nothing about the circuit";
      case UNSTEADY -> question.stated().isPresent() ? "nothing: the system states no range for this state"
          : "nothing steady: the circuit never settles, as when a contactor chatters";
      case LIVE -> "nothing: the circuit is live, and " + question.measured() + " need it without power";
      case OPEN -> "OL: no conductor leads from one point to the other";
      case NOT_SIMULATED -> "nothing: the circuit has no " + question.measured();
      case NOT_WIRED -> "nothing: no part of the circuit ends at one of the points";
    };
  }

  /** Names with the share of the installations, where it is not all of them: {@code contactor (92 %)}. */
  public static List<String> names(Map<String, Double> shares, Function<String, String> name) {
    return shares.entrySet().stream().map(one -> name.apply(one.getKey()) + share(one.getValue())).sorted()
        .toList();
  }

  private static String share(double share) {
    return share >= 1 ? "" : " (" + ReportNumbers.percent(share) + ")";
  }

  /** A part's name as the text writes it. */
  public static String part(String key, ReadingQuestion question) {
    return question.system().part(key).map(Part::name).orElse(key);
  }

  /** A sight's name as the text writes it. */
  public static String sight(String key, ReadingQuestion question) {
    return question.system().vocabulary().sightName(key);
  }
}
