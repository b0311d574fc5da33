package rungbook.tree.reader;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Quantity;
import rungbook.system.quantity.QuantityReader;
import rungbook.tree.Meter;

/** Reads a meter's text: {@code AC volts: 0 to 600 V, digit 0.1 V, 1 % + 3 digits, 10 Mohm}. */
public final class MeterReader {

  static final Code METER_LINE_UNREADABLE = Code.of("meter-line-unreadable");

  private static final String NUMBER = "(-?\\d{1,12}(?:\\.\\d{1,9})?)";
  private static final String AMOUNT = "(\\d{1,12}(?:\\.\\d{1,9})?)";
  /** A possessive quantifier: backtracking would make a long line of units quadratic. */
  private static final String UNIT = "([^\\s,][^,]*+)";
  private static final Pattern LINE = Pattern.compile(
      NUMBER + " to " + NUMBER + " " + UNIT + ", digit " + AMOUNT + " " + UNIT + ", " + AMOUNT + " % \\+ " + AMOUNT
          + " digits(?:, " + AMOUNT + " (\\S+))?");

  private final Document document;
  private final Problems problems = new Problems();

  private MeterReader(Document document) {
    this.document = document;
  }

  public record Read(Meter meter, List<Problem> problems) {}

  /** @param id the file's name without {@code .md} */
  public static Read read(String id, Document document) {
    return new MeterReader(document).read(id);
  }

  private Read read(String id) {
    Map<Quantity, Meter.Scale> scales = new EnumMap<>(Quantity.class);
    document.blocks("meter").stream().flatMap(block -> block.entries().stream())
        .forEach(entry -> quantity(entry)
            .ifPresent(quantity -> scale(entry, quantity).ifPresent(scale -> scales.put(quantity, scale))));
    String title = document.front("title").map(Entry::value).orElse(id);
    return new Read(new Meter(id, title, scales), problems.all());
  }

  private Optional<Quantity> quantity(Entry entry) {
    Optional<Quantity> quantity = Quantity.named(entry.key());
    if (quantity.isEmpty()) {
      problems.add(QuantityReader.unknown(entry.key(), Quantity.allWords(), document.source(), entry.keySpan()));
    }
    return quantity;
  }

  private Optional<Meter.Scale> scale(Entry entry, Quantity quantity) {
    Matcher line = LINE.matcher(entry.value());
    Optional<Meter.Scale> scale = line.matches() ? scale(line, quantity) : Optional.empty();
    if (scale.isEmpty()) {
      problems.add(
          Problem.at(METER_LINE_UNREADABLE, document.source(), entry.valueSpan()).with("quantity", quantity.words()));
    }
    return scale;
  }

  private static Optional<Meter.Scale> scale(Matcher line, Quantity quantity) {
    Optional<BigDecimal> low = quantity.inOwnUnit(new BigDecimal(line.group(1)), line.group(3));
    Optional<BigDecimal> high = quantity.inOwnUnit(new BigDecimal(line.group(2)), line.group(3));
    Optional<BigDecimal> digit = quantity.stepInOwnUnit(new BigDecimal(line.group(4)), line.group(5));
    Optional<BigDecimal> ohms = line.group(8) == null ? Optional.empty()
        : Quantity.OHMS.inOwnUnit(new BigDecimal(line.group(8)), line.group(9));
    boolean sane = low.isPresent() && high.isPresent() && digit.filter(step -> step.signum() > 0).isPresent()
        && low.get().compareTo(high.get()) < 0
        && (line.group(8) == null || ohms.filter(load -> load.signum() > 0).isPresent());
    return sane
        ? Optional.of(new Meter.Scale(low.get(), high.get(), digit.get(), new BigDecimal(line.group(6)),
            new BigDecimal(line.group(7)), ohms))
        : Optional.empty();
  }
}
