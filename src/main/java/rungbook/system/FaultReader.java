package rungbook.system;

import static rungbook.system.EffectKind.CROSS;
import static rungbook.system.EffectKind.HOLD;
import static rungbook.system.EffectKind.LOWER;
import static rungbook.system.EffectKind.OPEN;
import static rungbook.system.EffectKind.RAISE;
import static rungbook.system.EffectKind.SHORT;
import static rungbook.system.EffectKind.STOP;
import static rungbook.system.EffectKind.TAP;
import static rungbook.system.EffectKind.WEAKEN;
import static rungbook.system.Part.CONTACT_OHMS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;
import rungbook.source.Code;

/** Reads one line of {@code faults}: effects, then {@code likelihood N}. */
final class FaultReader {

  static final Code FAULT_JOINS_ITSELF = Code.of("fault-joins-itself");
  static final Code FAULT_WITHOUT_EFFECT = Code.of("fault-without-effect");
  static final Code UNKNOWN_EFFECT = Code.of("unknown-effect");

  private static final String N = "(\\d+(?:\\.\\d+)?)";

  private static final Pattern LIKELIHOOD = Pattern.compile("likelihood (-?\\d+(?:\\.\\d+)?)");

  private record Form(Pattern pattern, Function<Matcher, Optional<Effect>> read) {}

  private final Terminals terminals;
  private final ControlSystem system;
  private final SystemProblems problems;
  private final FaultyParts parts;
  private final List<Form> forms = new ArrayList<>();

  private String name;
  private Entry.Item item;

  /** @param system its parts are all there, unless there are problems already */
  FaultReader(ControlSystem system, Terminals terminals, SystemProblems problems) {
    this.system = system;
    this.terminals = terminals;
    this.problems = problems;
    this.parts = new FaultyParts(system, problems);
    form("open (.+)", m -> parts.limb(OPEN, m.group(1), item).map(Effect.Open::new));
    form("short (.+) to (.+)", m -> join(m.group(1), m.group(2)));
    form("short (.+)", m -> parts.limb(SHORT, m.group(1), item).map(key -> new Effect.Bridge(key, CONTACT_OHMS)));
    form("raise (.+) by " + N + " ohm",
        m -> parts.limb(RAISE, m.group(1), item).map(key -> new Effect.Raise(key, quantity(m, 2, 0))));
    form("hold (.+) (open|closed)",
        m -> parts.limb(HOLD, m.group(1), item).map(key -> new Effect.Hold(key, m.group(2).equals("closed"))));
    form("stop (.+)", m -> parts.part(STOP, m.group(1), item).map(Effect.Stop::new));
    form("cross (.+) with (.+)", m -> cross(m.group(1), m.group(2)));
    // once its resistance is a sound transformer
    form("weaken (.+) " + N + " times",
        m -> parts.part(WEAKEN, m.group(1), item).map(key -> new Effect.Weaken(key, quantity(m, 2, 1))));
    form("tap (.+) for " + N + " V",
        m -> parts.part(TAP, m.group(1), item).map(key -> new Effect.Tap(key, quantity(m, 2, 0))));
    form("lower (.+) to " + N + " to " + N + " V",
        m -> parts.part(LOWER, m.group(1), item)
            .map(key -> new Effect.Lower(key, range(quantity(m, 2, 0), quantity(m, 3, 0)))));
  }

  private void form(String pattern, Function<Matcher, Optional<Effect>> read) {
    forms.add(new Form(Pattern.compile(pattern, Pattern.DOTALL), read));
  }

  private static double number(Matcher match, int group) {
    return Double.parseDouble(match.group(group));
  }

  /** A number that has to be more than {@code least}; what cannot be is reported, and a number that can stands in. */
  private double quantity(Matcher match, int group, double least) {
    double written = number(match, group);
    if (written > least && written <= PartReader.MOST_QUANTITY) {
      return written;
    }
    absurd();
    return least + 1;
  }

  private Interval range(double low, double high) {
    if (low > high) {
      absurd();
    }
    return new Interval(Math.min(low, high), Math.max(low, high));
  }

  private void absurd() {
    problems.add(PartReader.ABSURD_QUANTITY, item.span(), "name", name);
  }

  Fault read(Entry entry) {
    var effects = new ArrayList<Effect>();
    double likelihood = 1;
    name = entry.key();
    for (Entry.Item one : entry.items()) {
      item = one;
      Matcher weight = LIKELIHOOD.matcher(one.text());
      if (weight.matches()) {
        likelihood = likelihood(number(weight, 1));
      } else {
        effect().ifPresent(effects::add);
      }
    }
    if (entry.items().stream().allMatch(one -> LIKELIHOOD.matcher(one.text()).matches()) && !system.parts().isEmpty()) {
      problems.add(FAULT_WITHOUT_EFFECT, entry.keySpan(), "name", entry.key());
    }
    return new Fault(entry.key(), effects, likelihood);
  }

  private double likelihood(double written) {
    if (written <= 0) {
      absurd();
      return 1;
    }
    return written;
  }

  private Optional<Effect> effect() {
    for (Form form : forms) {
      Matcher match = form.pattern().matcher(item.text());
      if (match.matches()) {
        return form.read().apply(match);
      }
    }
    problems.add(UNKNOWN_EFFECT, item.span(), "name", item.text());
    return Optional.empty();
  }

  private Optional<Effect> join(String a, String b) {
    Optional<Terminal> from = terminals.find(a, item.span());
    Optional<Terminal> till = terminals.find(b, item.span());
    if (from.isPresent() && from.equals(till)) {
      joinsItself(from.get());
    }
    return from.flatMap(x -> till.map(y -> new Effect.Join(x, y, CONTACT_OHMS)));
  }

  private Optional<Effect> cross(String first, String second) {
    Optional<String> from = parts.limb(CROSS, first, item);
    Optional<String> with = parts.limb(CROSS, second, item);
    if (from.isPresent() && from.equals(with)) {
      joinsItself(first);
    }
    return from.flatMap(a -> with.map(b -> new Effect.Cross(a, b)));
  }

  private void joinsItself(Object twice) {
    problems.add(FAULT_JOINS_ITSELF, item.span(), "name", name, "twice", twice);
  }
}
