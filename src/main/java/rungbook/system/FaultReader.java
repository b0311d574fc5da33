package rungbook.system;

import static rungbook.system.PartReader.CONTACT_OHMS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;

/** Reads one line of {@code faults}: effects, then {@code likelihood N}. */
final class FaultReader {

  private static final String N = "(\\d+(?:\\.\\d+)?)";

  private static final Pattern LIKELIHOOD = Pattern.compile("likelihood (-?\\d+(?:\\.\\d+)?)");

  /** The sentence of each effect. */
  static final List<String> SENTENCES = List.of("open PART", "short PART", "short POINT to POINT", "raise PART by N ohm",
      "hold PART open", "hold PART closed", "stop PART", "cross PART with PART", "weaken PART N times", "tap PART for N V",
      "lower PART to N to N V");

  private record Form(Pattern pattern, Function<Matcher, Optional<Effect>> read) {}

  private final Terminals terminals;
  private final ControlSystem system;
  private final SystemProblems problems;
  private final boolean everyPartIsRead;
  private final List<Form> forms = new ArrayList<>();

  private Entry.Item item;

  /** @param system its parts are all there, unless there are problems already */
  FaultReader(ControlSystem system, Terminals terminals, SystemProblems problems) {
    this.system = system;
    this.terminals = terminals;
    this.problems = problems;
    this.everyPartIsRead = problems.all().isEmpty();
    form("open (.+)", m -> limb(m.group(1)).map(Effect.Open::new));
    form("short (.+) to (.+)", m -> join(m.group(1), m.group(2)));
    form("short (.+)", m -> limb(m.group(1)).map(key -> new Effect.Bridge(key, CONTACT_OHMS)));
    form("raise (.+) by " + N + " ohm", m -> limb(m.group(1)).map(key -> new Effect.Raise(key, number(m, 2))));
    form("hold (.+) (open|closed)", m -> limb(m.group(1)).map(key -> new Effect.Hold(key, m.group(2).equals("closed"))));
    form("stop (.+)", m -> part(m.group(1)).map(Effect.Stop::new));
    form("cross (.+) with (.+)", m -> limb(m.group(1)).flatMap(a -> limb(m.group(2)).map(b -> new Effect.Cross(a, b))));
    form("weaken (.+) " + N + " times", m -> part(m.group(1)).map(key -> new Effect.Weaken(key, number(m, 2))));
    form("tap (.+) for " + N + " V", m -> part(m.group(1)).map(key -> new Effect.Tap(key, number(m, 2))));
    form("lower (.+) to " + N + " to " + N + " V",
        m -> part(m.group(1)).map(key -> new Effect.Lower(key, new Between(number(m, 2), number(m, 3)))));
  }

  private void form(String pattern, Function<Matcher, Optional<Effect>> read) {
    forms.add(new Form(Pattern.compile(pattern), read));
  }

  private static double number(Matcher match, int group) {
    return Double.parseDouble(match.group(group));
  }

  Fault read(Entry entry) {
    var effects = new ArrayList<Effect>();
    double likelihood = 1;
    for (Entry.Item one : entry.items()) {
      item = one;
      Matcher weight = LIKELIHOOD.matcher(one.text());
      if (weight.matches()) {
        likelihood = likelihood(number(weight, 1), entry.key());
      } else {
        effect().ifPresent(effects::add);
      }
    }
    if (entry.items().stream().allMatch(one -> LIKELIHOOD.matcher(one.text()).matches()) && !system.parts().isEmpty()) {
      problems.add("fault-without-effect", entry.keySpan(), "name", entry.key());
    }
    return new Fault(entry.key(), entry.keySpan(), effects, likelihood);
  }

  private double likelihood(double written, String name) {
    if (written <= 0) {
      problems.add("absurd-quantity", item.span(), "name", name);
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
    problems.unknown("unknown-effect", item.span(), item.text(), SENTENCES);
    return Optional.empty();
  }

  private Optional<Effect> join(String a, String b) {
    Optional<Terminal> from = terminals.find(a, item.span());
    Optional<Terminal> till = terminals.find(b, item.span());
    return from.flatMap(x -> till.map(y -> new Effect.Join(x, y, CONTACT_OHMS)));
  }

  private Optional<String> limb(String written) {
    return known(written, system.parts().stream().flatMap(part -> part.limbs().stream()).map(Limb::name).toList());
  }

  private Optional<String> part(String written) {
    return known(written, system.parts().stream().map(Part::name).toList());
  }

  private Optional<String> known(String written, List<String> names) {
    String key = Names.key(written);
    if (names.stream().anyMatch(name -> Names.key(name).equals(key))) {
      return Optional.of(key);
    }
    if (everyPartIsRead) {
      problems.unknown("fault-without-part", item.span(), written, names);
    }
    return Optional.empty();
  }
}
