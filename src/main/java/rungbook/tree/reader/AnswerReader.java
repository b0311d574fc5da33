package rungbook.tree.reader;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Quantity;
import rungbook.tree.Answer;
import rungbook.tree.Numbers;
import rungbook.tree.Range;

/** Reads the answers of ways on: ranges of readings, or words. */
final class AnswerReader {

  static final Code ANSWER_EMPTY = Code.of("answer-empty");
  static final Code ANSWER_UNREADABLE = Code.of("answer-unreadable");
  static final Code ANSWER_WORDS = Code.of("answer-words");
  static final Code RANGE_BACKWARDS = Code.of("range-backwards");
  static final Code UNIT_MISMATCH = Code.of("unit-mismatch");

  private final Source source;
  private final Problems problems;

  AnswerReader(Source source, Problems problems) {
    this.source = source;
    this.problems = problems;
  }

  /** An answer in readings, in the quantity's unit. */
  Answer reading(String written, Span span, Quantity quantity) {
    return switch (singleSpaced(written).toLowerCase(Locale.ROOT)) {
      case "ol" -> new Answer.Overload();
      case "no reading" -> new Answer.NoReading();
      case "anything else" -> new Answer.AnythingElse();
      default -> range(written, span, quantity).<Answer>map(Answer.Within::new).orElse(new Answer.Unreadable());
    };
  }

  /** An answer in words, one for each thing checked. */
  Answer words(String written, Span span, int things) {
    String lower = written.toLowerCase(Locale.ROOT);
    if (lower.equals("anything else")) {
      return new Answer.AnythingElse();
    }
    List<String> words = Arrays.stream(lower.split(",", -1)).map(String::strip).toList();
    if (words.contains("")) {
      problems.add(Problem.at(ANSWER_EMPTY, source, span));
      return new Answer.Unreadable();
    }
    if (things > 1 && words.size() != things) {
      problems.add(Problem.at(ANSWER_WORDS, source, span).with("words", words.size()).with("things", things));
      return new Answer.Unreadable();
    }
    return new Answer.Words(things > 1 ? words : List.of(lower));
  }

  /**
   * {@code 24 to 28 V}, {@code under 5}, {@code 24 or more}, {@code 0}; empty, with a problem, if it is not a range.
   */
  Optional<Range> range(String written, Span span, Quantity quantity) {
    if (written.isEmpty()) {
      return refuse(ANSWER_EMPTY, written, span, quantity);
    }
    String text = singleSpaced(written);
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.startsWith("under ") || lower.startsWith("over ")) {
      return oneEnded(text.substring(text.indexOf(' ') + 1), lower.startsWith("over "), false, span, quantity);
    }
    if (lower.endsWith(" or more") || lower.endsWith(" or less")) {
      return oneEnded(text.substring(0, text.length() - " or more".length()), lower.endsWith("more"), true, span,
          quantity);
    }
    int to = lower.indexOf(" to ");
    return to > 0 ? twoEnded(text.substring(0, to), text.substring(to + 4), span, quantity)
        : number(text, span, quantity).map(value -> Range.between(value, value));
  }

  private static String singleSpaced(String written) {
    return written.contains("  ") || written.indexOf('\t') >= 0 ? written.replaceAll("\\s+", " ") : written;
  }

  private Optional<Range> oneEnded(String end, boolean over, boolean included, Span span, Quantity quantity) {
    return number(end, span, quantity).map(value -> over ? Range.over(value, included) : Range.under(value, included));
  }

  private Optional<Range> twoEnded(String low, String high, Span span, Quantity quantity) {
    String unit = Numbers.read(high.strip()).map(Numbers.Measured::unit).orElse("");
    boolean bare = Numbers.read(low.strip()).filter(measured -> measured.unit().isEmpty()).isPresent();
    Optional<BigDecimal> from = number(bare ? low.strip() + unit : low, span, quantity);
    Optional<Range> range = from.isEmpty() ? Optional.empty()
        : number(high, span, quantity).map(to -> Range.between(from.get(), to));
    if (range.filter(Range::isBackwards).isPresent()) {
      problems.add(Problem.at(RANGE_BACKWARDS, source, span).with("low", low.strip()).with("high", high.strip()));
      return Optional.empty();
    }
    return range;
  }

  private Optional<BigDecimal> number(String written, Span span, Quantity quantity) {
    Optional<Numbers.Measured> measured = Numbers.read(written.strip());
    if (measured.isEmpty()) {
      return refuse(ANSWER_UNREADABLE, written, span, quantity);
    }
    Optional<BigDecimal> own = quantity.inOwnUnit(measured.get().number(), measured.get().unit());
    return own.isPresent() ? own : refuse(UNIT_MISMATCH, measured.get().unit(), span, quantity);
  }

  private <T> Optional<T> refuse(Code code, String written, Span span, Quantity quantity) {
    problems.add(Problem.at(code, source, span).with("written", written).with("quantity", quantity.words()).with("unit",
        quantity.unit()));
    return Optional.empty();
  }
}
