package rungbook.system.quantity;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.Effect;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.QuantityRanges;
import rungbook.system.Vocabulary;
import rungbook.system.sight.Showing;

/** Reads the lines of {@code quantities}, and what faults show of them: {@code show temperature rise 75 to 110 F}. */
public final class QuantityReader {

  public static final Code UNKNOWN_QUANTITY = Code.of("unknown-quantity");
  static final Code QUANTITY_UNREADABLE = Code.of("quantity-unreadable");

  /** A name before a range: what is shown must be a quantity. */
  private static final Pattern RANGED = Pattern.compile("(.{1,250}?) -?\\d{1,12}(?:\\.\\d{1,9})? .*", Pattern.DOTALL);

  private final Vocabulary vocabulary;
  private final Function<Entry.Item, Condition> conditions;
  private final Source source;
  private final Consumer<Problem> problems;

  /**
   * Creates a reader.
   *
   * @param conditions reads a condition, and reports what is wrong with it
   */
  public QuantityReader(Vocabulary vocabulary, Function<Entry.Item, Condition> conditions, Source source,
      Consumer<Problem> problems) {
    this.vocabulary = vocabulary;
    this.conditions = conditions;
    this.source = source;
    this.problems = problems;
  }

  /** The problem of a quantity that is not one of those known. */
  public static Problem unknown(String written, List<String> known, Source source, Span span) {
    return Problem.at(UNKNOWN_QUANTITY, source, span).with("quantity", written)
        .with("known", String.join(", ", known)).near(written, Nearest.to(written, known));
  }

  /** The ranges of a line; empty if it has a problem. */
  public Optional<QuantityRanges> read(Entry entry) {
    QuantityLine line = QuantityLine.of(entry, vocabulary.locations().keySet());
    Optional<Quantity> named = line.kind().flatMap(item -> Quantity.named(item.text()));
    if (named.isEmpty()) {
      problems.accept(unknownKind(line));
      return Optional.empty();
    }
    Optional<Flaw> flaw = line.quantity().isPresent() ? flaw(line)
        : Optional.of(new Flaw(line.kind().orElseThrow().span(),
            "is in " + named.get().words() + ", which the circuit itself says"));
    flaw.ifPresent(found -> refuse(entry.key(), found));
    return flaw.isPresent() ? Optional.empty() : Optional.of(ranges(line, line.quantity().orElseThrow()));
  }

  /** Each range where its condition holds; the one without a condition where none of them does. */
  private QuantityRanges ranges(QuantityLine line, Quantity kind) {
    List<Condition> stated = line.ranges().stream().flatMap(one -> one.when().map(conditions).stream()).toList();
    Iterator<Condition> next = stated.iterator();
    Condition rest = stated.isEmpty() ? Condition.always() : new Condition.Not(new Condition.Any(stated));
    return new QuantityRanges(Names.key(line.entry().key()), line.ranges().stream()
        .map(one -> new QuantityRanges.Ranged(range(one, kind).range().orElseThrow(),
            one.when().isPresent() ? next.next() : rest))
        .toList());
  }

  private Problem unknownKind(QuantityLine line) {
    List<String> known = Arrays.stream(Quantity.values()).filter(Quantity::isOutsideCircuit).map(Quantity::words)
        .toList();
    return unknown(line.kind().map(Entry.Item::text).orElse(""), known, source,
        line.kind().map(Entry.Item::span).orElse(line.entry().keySpan()));
  }

  private record Flaw(Span at, String what) {}

  private void refuse(String name, Flaw flaw) {
    problems.accept(Problem.at(QUANTITY_UNREADABLE, source, flaw.at()).with("name", name).with("what", flaw.what()));
  }

  private Optional<Flaw> flaw(QuantityLine line) {
    Span name = line.entry().keySpan();
    if (Quantity.named(line.entry().key()).isPresent()) {
      return Optional.of(new Flaw(name, "has the name of what every meter measures"));
    }
    if (vocabulary.sights().containsKey(Names.key(line.entry().key()))) {
      return Optional.of(new Flaw(name, "has the name of a sight"));
    }
    if (line.ranges().isEmpty()) {
      return Optional.of(new Flaw(name, "has no range"));
    }
    return line.ranges().stream().flatMap(one -> wrong(one, line).stream()).findFirst().or(() -> line.ranges().stream()
        .filter(one -> one.when().isEmpty()).skip(1).findFirst()
        .map(second -> new Flaw(second.item().span(), "has two ranges without a condition")));
  }

  private static Optional<Flaw> wrong(QuantityLine.Written one, QuantityLine line) {
    RangeText text = range(one, line.quantity().orElseThrow());
    return text.range().isPresent() ? Optional.empty() : Optional.of(new Flaw(one.item().span(), text.wrong()));
  }

  private static RangeText range(QuantityLine.Written one, Quantity kind) {
    return RangeText.of(one.range(), kind);
  }

  /** Whether what a fault shows is a quantity: one that the system states, or a name before a range. */
  public boolean isShown(String shown) {
    return stated(shown).isPresent() || isNamedBeforeRange(shown);
  }

  private boolean isNamedBeforeRange(String shown) {
    String key = Names.key(shown);
    return vocabulary.sight(key).isEmpty() && RANGED.matcher(shown).matches()
        && vocabulary.sights().keySet().stream().noneMatch(sight -> key.startsWith(sight + " "));
  }

  /** The quantity that a text begins with; of two, the one with the longer name. */
  private Optional<Vocabulary.StatedQuantity> stated(String shown) {
    String key = Names.key(shown) + " ";
    return vocabulary.quantities().entrySet().stream().filter(one -> key.startsWith(one.getKey() + " "))
        .max(Comparator.comparingInt(one -> one.getKey().length())).map(Map.Entry::getValue);
  }

  /** What a fault shows of a quantity; empty, with a problem, if that cannot be. */
  public Optional<Effect> shown(Showing showing, Span span) {
    Optional<Vocabulary.StatedQuantity> quantity = stated(showing.what());
    if (quantity.isEmpty()) {
      Matcher ranged = RANGED.matcher(showing.what());
      problems.accept(unknown(ranged.matches() ? ranged.group(1) : showing.what(), vocabulary.quantityNames(), source,
          span));
      return Optional.empty();
    }
    RangeText text = range(showing, quantity.get());
    if (text.range().isEmpty()) {
      refuse(quantity.get().name(), new Flaw(span, text.wrong()));
      return Optional.empty();
    }
    Condition when = showing.when().map(conditions).orElse(Condition.always());
    return Optional.of(new Effect.Shift(Names.key(quantity.get().name()), text.range().get(), when));
  }

  private static RangeText range(Showing showing, Vocabulary.StatedQuantity quantity) {
    int named = Math.min(showing.what().length(), quantity.name().length());
    return showing.isShown() ? RangeText.of(showing.what().substring(named).strip(), quantity.kind())
        : new RangeText(Optional.empty(), "is shown with a range, and not hidden");
  }
}
