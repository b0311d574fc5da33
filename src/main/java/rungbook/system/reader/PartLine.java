package rungbook.system.reader;

import static rungbook.system.Interval.exactly;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.Interval;
import rungbook.system.PartBranch;
import rungbook.system.PartValue;

/** One line of {@code parts}: its tokens and branches. A missing item is reported and replaced by a typical value. */
final class PartLine {

  /** No quantity of a control circuit is larger, in any unit. */
  static final double MOST_QUANTITY = 1e6;

  static final Code RANGE_NOT_DRAWN = Code.of("range-not-drawn");

  private static final String TOLERANCE = "tolerance %";
  private static final double MOST_TOLERANCE_PERCENT = 50;

  /** No delay is longer: a day. */
  private static final double MOST_SECONDS = 86_400;

  private static final double LEAST_CELSIUS = -60;
  private static final double MOST_CELSIUS = 150;

  private final Entry entry;
  private final PartTokens tokens;
  private final ConditionReader conditions;
  private final SystemProblems problems;
  private final BranchReader.Read branches;

  PartLine(Entry entry, Terminals terminals, ConditionReader conditions, SystemProblems problems) {
    this.entry = entry;
    this.conditions = conditions;
    this.problems = problems;
    tokens = PartTokens.of(entry, 1, kind().equals("capacitor") ? "uF" : "");
    branches = new BranchReader(this, tokens, terminals).read();
  }

  String name() {
    return entry.key();
  }

  Span span() {
    return entry.keySpan();
  }

  String kind() {
    return kindWord(entry);
  }

  /** The first item of a line, which is to be a kind of part. */
  static String kindWord(Entry entry) {
    int comma = entry.value().indexOf(',');
    return (comma < 0 ? entry.value() : entry.value().substring(0, comma)).strip();
  }

  List<PartBranch> branches() {
    return branches.found();
  }

  /** The branches; reports a part for which fewer pairs of points are written. */
  List<PartBranch> branches(int least) {
    if (branches.written() < least) {
      lacks(least == 1 ? "the two points it joins, such as `L1 to T1`" : "its " + least + " pairs of points");
    }
    return branches.found();
  }

  void lacks(String what) {
    problems.add(PartReader.PART_LACKS, span(), "name", name(), "what", what);
  }

  /** Reports a problem of the whole line. */
  void report(Code code) {
    problems.add(code, span(), "name", name());
  }

  /** A required quantity that is one number. */
  double need(String key) {
    return findOne(key).orElseGet(() -> needRange(key).low());
  }

  Interval needRange(String key) {
    return find(key).orElseGet(() -> {
      lacks("a quantity in " + key);
      return exactly(1);
    });
  }

  /** An optional quantity, which may be a range. */
  Optional<Interval> find(String key) {
    return tokens.find(key).map(PartTokens.Quantity::value);
  }

  /** An optional quantity that is one number; reports a range, because nothing would draw from it. */
  Optional<Double> findOne(String key) {
    return tokens.find(key).map(quantity -> {
      if (quantity.value().low() != quantity.value().high()) {
        problems.add(RANGE_NOT_DRAWN, quantity.span(), "name", name(), "what", key);
      }
      return quantity.value().low();
    });
  }

  /** A time in whole seconds, rounded up; 0 where the line has none. */
  int seconds(String key) {
    double seconds = findOne(key + " s").or(() -> findOne(key + " min").map(minutes -> 60 * minutes))
        .or(() -> findOne(key + " h").map(hours -> 3600 * hours)).orElse(0.0);
    return (int) Math.ceil(Math.min(seconds, MOST_SECONDS));
  }

  /** A quantity of a load. */
  Optional<PartValue> findValue(String key) {
    return find(key).map(written -> PartValue.of(key, written));
  }

  /** What a quantity without a range may be off by, as a share. */
  double tolerance(double usual) {
    return findOne(TOLERANCE).map(percent -> percent / 100).orElse(usual);
  }

  /** Whether the line has this item. */
  boolean says(String words) {
    return tokens.takeWord(words);
  }

  /** The capacitances that follow the pairs of points, microfarads. */
  List<Interval> microfarads() {
    return tokens.repeated().stream().map(PartTokens.Quantity::value).toList();
  }

  /** The rest of the item that starts with these words. */
  Optional<String> after(String start) {
    return tokens.takeAfter(start).stream().findFirst().map(Entry.Item::text);
  }

  Optional<Condition> condition(String start) {
    return tokens.takeAfter(start).stream().findFirst().map(conditions::read);
  }

  /** Reports the items that no reader asked for, and impossible quantities. */
  void reportLeftOver() {
    tokens.words().forEach(item -> unknown(item.span(), item.text()));
    tokens.unasked().forEach(quantity -> unknown(quantity.getValue().span(), quantity.getKey()));
    tokens.quantities().forEach(this::reportAbsurd);
    tokens.repeated().forEach(quantity -> reportAbsurd("uF", quantity));
  }

  private void unknown(Span span, String text) {
    problems.add(PartReader.UNKNOWN_PARTICULAR, span, "name", text);
  }

  private void reportAbsurd(String key, PartTokens.Quantity quantity) {
    double low = quantity.value().low();
    double high = quantity.value().high();
    if (!isPossible(key, low, high) || low > high) {
      problems.add(PartReader.ABSURD_QUANTITY, quantity.span(), "name", name());
    }
  }

  private static boolean isPossible(String key, double low, double high) {
    return switch (key) {
      case "C" -> low >= LEAST_CELSIUS && high <= MOST_CELSIUS;
      case TOLERANCE -> low >= 0 && high <= MOST_TOLERANCE_PERCENT;
      case "pf", "pf inrush", "pf magnetizing" -> low > 0 && high <= 1;
      case "on after s", "off after s" -> low > 0 && high <= MOST_SECONDS;
      case "on after min", "off after min" -> low > 0 && high <= MOST_SECONDS / 60;
      case "on after h", "off after h" -> low > 0 && high <= MOST_SECONDS / 3600;
      default -> low > 0 && high <= MOST_QUANTITY;
    };
  }
}
