package rungbook.system.reader;

import static rungbook.system.Part.CONTACT_OHMS;
import static rungbook.system.reader.EffectKind.CROSS;
import static rungbook.system.reader.EffectKind.HOLD;
import static rungbook.system.reader.EffectKind.LOWER;
import static rungbook.system.reader.EffectKind.OPEN;
import static rungbook.system.reader.EffectKind.RAISE;
import static rungbook.system.reader.EffectKind.SHORT;
import static rungbook.system.reader.EffectKind.STOP;
import static rungbook.system.reader.EffectKind.TAP;
import static rungbook.system.reader.EffectKind.WEAKEN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Interval;
import rungbook.system.Terminal;

/** Reads lines of {@code faults}: effects and {@code likelihood N}. */
final class FaultReader {

  static final Code FAULT_JOINS_ITSELF = Code.of("fault-joins-itself");
  static final Code FAULT_WITHOUT_EFFECT = Code.of("fault-without-effect");
  static final Code UNKNOWN_EFFECT = Code.of("unknown-effect");

  private static final String N = "(\\d+(?:\\.\\d+)?)";

  private static final Pattern LIKELIHOOD = Pattern.compile("likelihood (-?\\d+(?:\\.\\d+)?)");

  private record Form(Pattern pattern, BiFunction<Written, Matcher, Optional<Effect>> read) {}

  /** One item of a fault's line. */
  private record Written(String fault, Entry.Item item) {}

  private final Terminals terminals;
  private final ControlSystem system;
  private final SystemProblems problems;
  private final FaultyParts parts;
  private final List<Form> forms = new ArrayList<>();

  /**
   * Creates a reader.
   *
   * @param system has all its parts unless there are problems already
   */
  FaultReader(ControlSystem system, Terminals terminals, SystemProblems problems) {
    this.system = system;
    this.terminals = terminals;
    this.problems = problems;
    this.parts = new FaultyParts(system, problems);
    form("open (.+)", (w, m) -> parts.branch(OPEN, m.group(1), w.item()).map(Effect.Open::new));
    form("short (.+) to (.+)", (w, m) -> join(w, m.group(1), m.group(2)));
    form("short (.+)",
        (w, m) -> parts.branch(SHORT, m.group(1), w.item()).map(key -> new Effect.Bridge(key, CONTACT_OHMS)));
    form("raise (.+) by " + N + " ohm",
        (w, m) -> parts.branch(RAISE, m.group(1), w.item()).map(key -> new Effect.Raise(key, quantity(w, m, 2, 0))));
    form("hold (.+) (open|closed)",
        (w, m) -> parts.branch(HOLD, m.group(1), w.item())
            .map(key -> new Effect.Hold(key, m.group(2).equals("closed"))));
    form("stop (.+)", (w, m) -> parts.part(STOP, m.group(1), w.item()).map(Effect.Stop::new));
    form("cross (.+) with (.+)", (w, m) -> cross(w, m.group(1), m.group(2)));
    // one time its resistance is a healthy transformer
    form("weaken (.+) " + N + " times",
        (w, m) -> parts.part(WEAKEN, m.group(1), w.item()).map(key -> new Effect.Weaken(key, quantity(w, m, 2, 1))));
    form("tap (.+) for " + N + " V",
        (w, m) -> parts.part(TAP, m.group(1), w.item()).map(key -> new Effect.Tap(key, quantity(w, m, 2, 0))));
    form("lower (.+) to " + N + " to " + N + " V",
        (w, m) -> parts.part(LOWER, m.group(1), w.item())
            .map(key -> new Effect.Lower(key, range(w, quantity(w, m, 2, 0), quantity(w, m, 3, 0)))));
  }

  private void form(String pattern, BiFunction<Written, Matcher, Optional<Effect>> read) {
    forms.add(new Form(Pattern.compile(pattern, Pattern.DOTALL), read));
  }

  private static double number(Matcher match, int group) {
    return Double.parseDouble(match.group(group));
  }

  /** A number that must be more than {@code least}; reports an impossible one and returns a possible one. */
  private double quantity(Written written, Matcher match, int group, double least) {
    double number = number(match, group);
    if (number > least && number <= PartLine.MOST_QUANTITY) {
      return number;
    }
    absurd(written);
    return least + 1;
  }

  private Interval range(Written written, double low, double high) {
    if (low > high) {
      absurd(written);
    }
    return new Interval(Math.min(low, high), Math.max(low, high));
  }

  private void absurd(Written written) {
    problems.add(PartReader.ABSURD_QUANTITY, written.item().span(), "name", written.fault());
  }

  Fault read(Entry entry) {
    var effects = new ArrayList<Effect>();
    double likelihood = 1;
    for (Entry.Item item : entry.items()) {
      var written = new Written(entry.key(), item);
      Matcher weight = LIKELIHOOD.matcher(item.text());
      if (weight.matches()) {
        likelihood = likelihood(written, number(weight, 1));
      } else {
        effect(written).ifPresent(effects::add);
      }
    }
    if (entry.items().stream().allMatch(one -> LIKELIHOOD.matcher(one.text()).matches()) && !system.parts().isEmpty()) {
      problems.add(FAULT_WITHOUT_EFFECT, entry.keySpan(), "name", entry.key());
    }
    return new Fault(entry.key(), effects, likelihood);
  }

  private double likelihood(Written written, double number) {
    if (number <= 0) {
      absurd(written);
      return 1;
    }
    return number;
  }

  private Optional<Effect> effect(Written written) {
    for (Form form : forms) {
      Matcher match = form.pattern().matcher(written.item().text());
      if (match.matches()) {
        return form.read().apply(written, match);
      }
    }
    problems.add(UNKNOWN_EFFECT, written.item().span(), "name", written.item().text());
    return Optional.empty();
  }

  private Optional<Effect> join(Written written, String a, String b) {
    Optional<Terminal> from = terminals.find(a, written.item().span());
    Optional<Terminal> till = terminals.find(b, written.item().span());
    if (from.isPresent() && from.equals(till)) {
      joinsItself(written, from.get());
    }
    return from.flatMap(x -> till.map(y -> new Effect.Join(x, y, CONTACT_OHMS)));
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
