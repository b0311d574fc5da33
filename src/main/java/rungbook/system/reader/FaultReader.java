package rungbook.system.reader;

import static rungbook.system.Part.CONTACT_OHMS;
import static rungbook.system.reader.EffectKind.CROSS;
import static rungbook.system.reader.EffectKind.DERATE;
import static rungbook.system.reader.EffectKind.HOLD;
import static rungbook.system.reader.EffectKind.LOWER;
import static rungbook.system.reader.EffectKind.OPEN;
import static rungbook.system.reader.EffectKind.OVERLOAD;
import static rungbook.system.reader.EffectKind.RAISE;
import static rungbook.system.reader.EffectKind.SHORT;
import static rungbook.system.reader.EffectKind.STIFFEN;
import static rungbook.system.reader.EffectKind.STOP;
import static rungbook.system.reader.EffectKind.TAP;
import static rungbook.system.reader.EffectKind.WEAKEN;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Interval;
import rungbook.system.Terminal;
import rungbook.system.pairs.FaultPairReader;
import rungbook.system.quantity.QuantityReader;
import rungbook.system.remedy.ThingReader;
import rungbook.system.sight.Showing;
import rungbook.system.sight.ShownSights;

/**
 * Reads the effects in a line of {@code faults}. {@link ThingReader}, {@link LikelihoodReader} and
 * {@link FaultPairReader} read the rest.
 */
final class FaultReader {

  static final Code FAULT_JOINS_ITSELF = Code.of("fault-joins-itself");
  static final Code FAULT_WITHOUT_EFFECT = Code.of("fault-without-effect");
  static final Code UNKNOWN_EFFECT = Code.of("unknown-effect");

  private static final String N = "(\\d+(?:\\.\\d+)?)";

  /** One number, or two. */
  private static final String RANGE = N + "(?: to " + N + ")?";

  private static final String THROUGH = " through ";

  private static final Interval TOUCHING = Interval.exactly(CONTACT_OHMS);
  private static final double MOST_WEAK_PERCENT = 99;
  private static final double MOST_OVERLOAD_PERCENT = 1000;

  /** Every form in which an effect may be written, the first that fits. */
  private static final List<Form> FORMS = Stream.concat(openingsAndShorts(), weaknesses()).toList();

  /**
   * How an effect may be written.
   *
   * @param start the verb that each text of this form begins with
   * @param word what each contains; most long texts are refused without a match of the pattern
   */
  private record Form(String start, String word, Pattern pattern, Meaning meaning) {
    boolean mayFit(String text) {
      return text.startsWith(start) && text.contains(word);
    }
  }

  /** What the words of a form mean; empty if a name is not known. */
  @FunctionalInterface
  private interface Meaning {
    Optional<Effect> of(FaultReader reader, Written written, Matcher match);
  }

  /** One item of a fault's line. */
  private record Written(String fault, Entry.Item item) {}

  private final Terminals terminals;
  private final ControlSystem system;
  private final SystemProblems problems;
  private final FaultyParts parts;
  private final ConditionReader conditions;
  private final LikelihoodReader likelihoods;
  private final ThingReader things;
  private final ShownSights sights;
  private final QuantityReader quantities;

  /**
   * Creates a reader.
   *
   * @param system has all its parts unless there are problems already
   */
  FaultReader(ControlSystem system, Terminals terminals, ConditionReader conditions, SystemProblems problems) {
    this.system = system;
    this.terminals = terminals;
    this.problems = problems;
    this.conditions = conditions;
    this.likelihoods = new LikelihoodReader(problems);
    this.things = new ThingReader(problems.source(), problems::add);
    this.sights = new ShownSights(system.vocabulary(), conditions::read, problems.source(), problems::add);
    this.quantities = new QuantityReader(system.vocabulary(), conditions::read, problems.source(), problems::add);
    this.parts = new FaultyParts(system, problems);
  }

  private static Stream<Form> openingsAndShorts() {
    return Stream.of(
        form("open (.+)", (r, w, m) -> r.parts.branch(OPEN, m.group(1), w.item()).map(Effect.Open::new)),
        // bounded, since two open ends would make a long line take the square of its length
        form("short (.{1,250}?) to (.{1,250}?) through " + RANGE + " ohm",
            (r, w, m) -> r.join(w, m.group(1), m.group(2), r.range(w, m, 3, 0, PartLine.MOST_QUANTITY))),
        form("short (.+?) through " + RANGE + " ohm", (r, w, m) -> r.parts.branch(SHORT, m.group(1), w.item())
            .map(key -> new Effect.Bridge(key, r.range(w, m, 2, 0, PartLine.MOST_QUANTITY)))),
        form("short (.+) to (.+)", (r, w, m) -> r.join(w, m.group(1), m.group(2), TOUCHING)),
        form("short (.+)",
            (r, w, m) -> r.parts.branch(SHORT, m.group(1), w.item()).map(key -> new Effect.Bridge(key, TOUCHING))),
        form("raise (.+?) by " + RANGE + " ohm", (r, w, m) -> r.parts.branch(RAISE, m.group(1), w.item())
            .map(key -> new Effect.Raise(key, r.range(w, m, 2, 0, PartLine.MOST_QUANTITY)))),
        form("hold (.{1,250}?) (open|closed) when (.+)", FaultReader::trip),
        form("hold (.+) (open|closed)",
            (r, w, m) -> r.parts.branch(HOLD, m.group(1), w.item())
                .map(key -> new Effect.Hold(key, m.group(2).equals("closed")))),
        form("stop (.+)", (r, w, m) -> r.parts.part(STOP, m.group(1), w.item()).map(Effect.Stop::new)),
        form("cross (.+) with (.+)", (r, w, m) -> r.cross(w, m.group(1), m.group(2))));
  }

  private static Stream<Form> weaknesses() {
    return Stream.of(
        // one time its resistance is a healthy transformer, all of its microfarads a healthy capacitor
        form("weaken (.+?) " + RANGE + " times", (r, w, m) -> r.parts.part(WEAKEN, m.group(1), w.item())
            .map(key -> new Effect.Weaken(key, r.range(w, m, 2, 1, PartLine.MOST_QUANTITY)))),
        form("weaken (.+?) to " + RANGE + " %", (r, w, m) -> r.parts.branch(DERATE, m.group(1), w.item())
            .map(key -> new Effect.Derate(key, percent(r.range(w, m, 2, 0, MOST_WEAK_PERCENT))))),
        form("overload (.+?) to " + RANGE + " %", (r, w, m) -> r.parts.part(OVERLOAD, m.group(1), w.item())
            .map(key -> new Effect.Overload(key, percent(r.range(w, m, 2, 100, MOST_OVERLOAD_PERCENT))))),
        form("stiffen (.+?) to " + RANGE + " V", (r, w, m) -> r.parts.part(STIFFEN, m.group(1), w.item())
            .map(key -> new Effect.Stiffen(key, r.range(w, m, 2, 0, PartLine.MOST_QUANTITY)))),
        form("tap (.+) for " + N + " V", (r, w, m) -> r.parts.part(TAP, m.group(1), w.item())
            .map(key -> new Effect.Tap(key, r.quantity(w, m, 2, 0, PartLine.MOST_QUANTITY)))),
        form("lower (.+?) to " + RANGE + " V", (r, w, m) -> r.parts.part(LOWER, m.group(1), w.item())
            .map(key -> new Effect.Lower(key, r.range(w, m, 2, 0, PartLine.MOST_QUANTITY)))));
  }

  private static Form form(String pattern, Meaning meaning) {
    return new Form(pattern.substring(0, pattern.indexOf(' ') + 1), pattern.contains(THROUGH) ? THROUGH : "",
        Pattern.compile(pattern, Pattern.DOTALL), meaning);
  }

  private static double number(Matcher match, int group) {
    return Double.parseDouble(match.group(group));
  }

  /** A number above {@code least}, up to {@code most}; reports an impossible one and returns a possible one. */
  private double quantity(Written written, Matcher match, int group, double least, double most) {
    double number = number(match, group);
    if (number > least && number <= most) {
      return number;
    }
    absurd(written);
    return most;
  }

  /** One number, or the range of this group and the next. */
  private Interval range(Written written, Matcher match, int group, double least, double most) {
    double low = quantity(written, match, group, least, most);
    double high = match.group(group + 1) == null ? low : quantity(written, match, group + 1, least, most);
    if (low > high) {
      absurd(written);
    }
    return new Interval(Math.min(low, high), Math.max(low, high));
  }

  private static Interval percent(Interval percent) {
    return percent.map(each -> each / 100);
  }

  private void absurd(Written written) {
    problems.add(PartReader.ABSURD_QUANTITY, written.item().span(), "name", written.fault());
  }

  /** The parts, and the names in conditions, asked for since this was called last. */
  Set<String> takeAsked() {
    Set<String> asked = parts.takeAsked();
    asked.addAll(conditions.takeAsked());
    return asked;
  }

  Fault read(Entry entry) {
    List<Entry.Item> done = entry.items().stream()
        .filter(item -> !LikelihoodReader.isLikelihood(item) && !ThingReader.isThing(item)
            && !FaultPairReader.isPair(item.text()))
        .toList();
    List<Effect> effects = done.stream().flatMap(item -> effects(new Written(entry.key(), item)).stream()).toList();
    double likelihood = likelihoods.read(entry);
    if (done.isEmpty() && !system.parts().isEmpty()) {
      problems.add(FAULT_WITHOUT_EFFECT, entry.keySpan(), "name", entry.key());
    }
    return new Fault(entry.key(), things.read(entry), effects, likelihood);
  }

  private List<Effect> effects(Written written) {
    return Showing.of(written.item()).map(showing -> shown(showing, written.item().span()))
        .orElseGet(() -> effect(written).stream().toList());
  }

  private List<Effect> shown(Showing showing, Span span) {
    return quantities.isShown(showing.what()) ? quantities.shown(showing, span).stream().toList()
        : sights.read(showing, span);
  }

  private Optional<Effect> effect(Written written) {
    String text = written.item().text();
    for (Form form : FORMS) {
      if (form.mayFit(text)) {
        Matcher match = form.pattern().matcher(text);
        if (match.matches()) {
          return form.meaning().of(this, written, match);
        }
      }
    }
    problems.add(UNKNOWN_EFFECT, written.item().span(), "name", written.item().text());
    return Optional.empty();
  }

  private Optional<Effect> trip(Written written, Matcher match) {
    Condition when = conditions.read(new Entry.Item(match.group(3).strip(), written.item().span()));
    return parts.branch(HOLD, match.group(1), written.item())
        .map(key -> new Effect.Trip(key, match.group(2).equals("closed"), when));
  }

  private Optional<Effect> join(Written written, String a, String b, Interval ohms) {
    Optional<Terminal> from = terminals.find(a, written.item().span());
    Optional<Terminal> till = terminals.find(b, written.item().span());
    if (from.isPresent() && from.equals(till)) {
      joinsItself(written, from.get());
    }
    return from.flatMap(x -> till.map(y -> new Effect.Join(x, y, ohms)));
  }

  private Optional<Effect> cross(Written written, String first, String second) {
    Optional<String> from = parts.branch(CROSS, first, written.item());
    Optional<String> with = parts.branch(CROSS, second, written.item());
    if (from.isPresent() && from.equals(with)) {
      joinsItself(written, first);
    }
    return from.flatMap(a -> with.map(b -> new Effect.Cross(a, b)));
  }

  private void joinsItself(Written written, Object twice) {
    problems.add(FAULT_JOINS_ITSELF, written.item().span(), "name", written.fault(), "twice", twice);
  }
}
