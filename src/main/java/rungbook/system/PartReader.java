package rungbook.system;

import static rungbook.system.Interval.exactly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Span;

/**
 * Reads one line of {@code parts}. What it needs and lacks is reported; a typical value stands in so that reading goes
 * on.
 */
final class PartReader {

  static final Code ABSURD_QUANTITY = Code.of("absurd-quantity");
  static final Code PART_LACKS = Code.of("part-lacks");
  static final Code REGULATION_WITHOUT_BASIS = Code.of("regulation-without-basis");
  static final Code UNKNOWN_PART_KIND = Code.of("unknown-part-kind");
  static final Code UNKNOWN_PARTICULAR = Code.of("unknown-particular");

  /** No quantity of a control circuit is larger, in any unit. */
  static final double MOST_QUANTITY = 1e6;

  /** Between two conductors of a jacketed control cable (common practice, no source). */
  static final Interval PICOFARADS_PER_FOOT = new Interval(20, 40);

  static final Interval PICOFARADS_PER_FOOT_TO_GROUND = new Interval(3, 8);

  /** IEC 60947-4-1, from memory: AC contactors operate from 85 % and drop out between 20 % and 75 %. */
  private static final double PICKS_UP_SHARE = 0.85;

  private static final double DROPS_OUT_SHARE = 0.5;

  private final Terminals terminals;
  private final ConditionReader conditions;
  private final SystemProblems problems;

  private Entry entry;
  private String name;
  private PartTokens phrases;
  private List<PartBranch> limbs;
  private int joinsWritten;

  PartReader(Terminals terminals, ConditionReader conditions, SystemProblems problems) {
    this.terminals = terminals;
    this.conditions = conditions;
    this.problems = problems;
  }

  static String kindOf(Entry entry) {
    return entry.items().get(0).text();
  }

  Optional<Part> read(Entry line) {
    entry = line;
    name = line.key();
    phrases = PartTokens.of(line, 1, kindOf(line).equals("capacitor") ? "uF" : "");
    Optional<Part> part = Optional.ofNullable(readKind(kindOf(line)));
    part.ifPresent(read -> reportLeftOver());
    return part;
  }

  private Part readKind(String kind) {
    limbs = kind.equals("cable") ? conductors() : joins();
    return switch (kind) {
      case "supply" -> supply();
      case "breaker", "fuse" -> new Part.Fuse(name, span(), atLeast(1), need("A"), kind.equals("breaker"));
      case "switch", "interlock", "contact" -> contact(kind);
      case "cable" -> cable();
      case "wire" ->
          new Part.Wire(name, span(), atLeast(1), may("ohm").map(Interval::middle).orElse(Part.CONTACT_OHMS));
      case "joint" -> new Part.Joint(name, span(), atLeast(1));
      case "transformer" -> transformer();
      case "coil" -> coil();
      case "motor" -> motor();
      case "load", "board", "thermostat", "input", "heater" -> load();
      case "capacitor" -> capacitor();
      case "state" -> state();
      default -> {
        problems.unknown(UNKNOWN_PART_KIND, entry.items().get(0).span(), kind, KINDS);
        yield null;
      }
    };
  }

  static final List<String> KINDS = List.of("supply", "breaker", "fuse", "switch", "interlock", "contact", "cable",
      "wire",
      "joint", "transformer", "coil", "motor", "load", "board", "thermostat", "input", "heater", "capacitor", "state");

  private Span span() {
    return entry.keySpan();
  }

  private List<PartBranch> joins() {
    var items = phrases.words().stream().filter(item -> item.text().contains(" to ") && !isCondition(item)).toList();
    phrases.words().removeAll(items);
    joinsWritten = items.size();
    var found = new ArrayList<PartBranch>();
    items.forEach(item -> terminals.join(limbName(items.size(), item), item).ifPresent(found::add));
    return found;
  }

  private static boolean isCondition(Entry.Item item) {
    return item.text().contains(" when ");
  }

  /** A part of several limbs names each by its first terminal. */
  private String limbName(int howMany, Entry.Item item) {
    if (howMany == 1) {
      return name;
    }
    String first = item.text().substring(0, item.text().indexOf(" to "));
    int at = first.lastIndexOf(" at ");
    return name + " " + (at < 0 ? first : first.substring(0, at)).strip();
  }

  private List<PartBranch> conductors() {
    var wanted = phrases.takeAfter("conductor ");
    var ends = phrases.words().stream().filter(item -> item.text().contains(" to ")).findFirst();
    if (ends.isEmpty() || wanted.isEmpty()) {
      lacks(ends.isEmpty() ? "the two places it runs between, such as `thermostat to furnace`"
          : "its conductors, such as `conductor Y`");
      return List.of();
    }
    phrases.words().remove(ends.get());
    String[] places = ends.get().text().split(" to ", 2);
    return wanted.stream().flatMap(item -> conductor(item, places).stream()).toList();
  }

  private Optional<PartBranch> conductor(Entry.Item item, String[] places) {
    String[] points = item.text().split(" to ", 2);
    String far = points.length > 1 ? points[1] : points[0];
    var written = new Entry.Item(points[0] + " at " + places[0] + " to " + far + " at " + places[1], item.span());
    return terminals.join(points[0] + " " + name, written);
  }

  private List<PartBranch> atLeast(int howMany) {
    if (joinsWritten < howMany) {
      lacks(howMany == 1 ? "the two points it joins, such as `L1 to T1`" : "its " + howMany + " pairs of points");
    }
    return limbs;
  }

  private void lacks(String what) {
    problems.add(PART_LACKS, span(), "name", name, "what", what);
  }

  private double need(String key) {
    return needRange(key).middle();
  }

  private Interval needRange(String key) {
    return may(key).orElseGet(() -> {
      lacks("a quantity in " + key);
      return exactly(1);
    });
  }

  private Optional<Interval> may(String key) {
    return phrases.find(key);
  }

  private Part supply() {
    double nominal = need("V");
    Interval volts = may("from V").orElse(exactly(nominal));
    return new Part.Supply(name, span(), atLeast(1), volts, may("Hz").map(Interval::middle).orElse(60.0), need("ohm"));
  }

  private Part contact(String kind) {
    Optional<Condition> written = condition("closed when ");
    if (kind.equals("contact") && written.isEmpty()) {
      lacks("when it is closed, such as `closed when contactor on`");
    }
    Optional<String> panel = phrases.takeAfter("opens with ").stream().map(item -> Names.key(item.text())).findFirst();
    return new Part.Switch(name, span(), atLeast(1), written.orElse(Condition.ALWAYS), panel);
  }

  private Optional<Condition> condition(String start) {
    return phrases.takeAfter(start).stream().findFirst().map(conditions::read);
  }

  private Part cable() {
    return new Part.Cable(name, span(), limbs, (int) need("AWG"), needRange("ft"), may("C").orElse(new Interval(0, 50)),
        may("pF/ft").orElse(PICOFARADS_PER_FOOT), may("pF/ft to ground").orElse(PICOFARADS_PER_FOOT_TO_GROUND));
  }

  private Part transformer() {
    double secondary = need("V secondary");
    double voltAmps = need("VA");
    Optional<Interval> ofFull = may("regulation % of full load");
    Optional<Interval> ofNone = may("regulation % of no load");
    if (ofFull.isEmpty() && ofNone.isEmpty()) {
      may("regulation %");
      problems.add(REGULATION_WITHOUT_BASIS, span(), "name", name);
    }
    Interval noLoad = ofNone.map(r -> new Interval(secondary / (1 - r.low() / 100), secondary / (1 - r.high() / 100)))
        .orElseGet(() -> rise(secondary, ofFull.orElse(exactly(10))));
    double fullAmps = voltAmps / secondary;
    var ohms = new Interval((noLoad.low() - secondary) / fullAmps, (noLoad.high() - secondary) / fullAmps);
    return new Part.Transformer(name, span(), windings(), need("V primary"), secondary, voltAmps, noLoad, ohms);
  }

  private static Interval rise(double volts, Interval percent) {
    return new Interval(volts * (1 + percent.low() / 100), volts * (1 + percent.high() / 100));
  }

  private List<PartBranch> windings() {
    atLeast(2);
    String[] sides = {"primary", "secondary"};
    return Stream.iterate(0, i -> i < Math.min(2, limbs.size()), i -> i + 1)
        .map(i -> new PartBranch(name + " " + sides[i], limbs.get(i).a(), limbs.get(i).b())).toList();
  }

  private Part coil() {
    double volts = need("V");
    OptionalDouble wire = optional("ohm");
    var on = Part.Impedance.of(volts, need("VA"), wire, 0.4);
    var rest = may("VA inrush").map(va -> Part.Impedance.of(volts, va.middle(), wire, 0.6)).orElse(on);
    return consumer(volts, rest, on, wire.orElse(on.resistance()), PICKS_UP_SHARE, DROPS_OUT_SHARE);
  }

  private Part motor() {
    double volts = need("V");
    double factor = may("pf").map(Interval::middle).orElse(0.8);
    OptionalDouble wire = optional("ohm");
    double amps = need("A");
    var on = Part.Impedance.of(volts, volts * amps, OptionalDouble.empty(), factor);
    var rest = may("A locked").map(a -> Part.Impedance.of(volts, volts * a.middle(), OptionalDouble.empty(), factor))
        .orElse(on);
    return consumer(volts, rest, on, wire.orElse(Math.min(on.resistance(), rest.resistance())), 0.6, 0.5);
  }

  private Part load() {
    double volts = need("V");
    Optional<Interval> watts = may("W").or(() -> may("kW").map(k -> new Interval(k.low() * 1000, k.high() * 1000)));
    double voltAmps = watts.or(() -> may("VA")).map(Interval::middle).orElseGet(() -> {
      lacks("a quantity in VA, W or kW");
      return 1.0;
    });
    double factor = watts.isPresent() ? 1 : may("pf").map(Interval::middle).orElse(1.0);
    var ohms = Part.Impedance.of(volts, voltAmps, OptionalDouble.empty(), factor);
    return consumer(volts, ohms, ohms, optional("ohm").orElse(ohms.resistance()), 0.7, 0.6);
  }

  private OptionalDouble optional(String key) {
    return may(key).map(value -> OptionalDouble.of(value.middle())).orElse(OptionalDouble.empty());
  }

  private Part consumer(double volts, Part.Impedance rest, Part.Impedance on, double wireOhms, double onShare,
      double offShare) {
    Interval onVolts = may("picks up at V").or(() -> may("works above V")).orElse(exactly(volts * onShare));
    Interval offVolts = may("drops out at V").orElse(exactly(Math.min(onVolts.low(), volts * offShare)));
    Condition only = condition("only when ").orElse(Condition.ALWAYS);
    return new Part.Load(name, span(), atLeast(1), rest, on, wireOhms, onVolts, offVolts, only);
  }

  private Part capacitor() {
    var sizes = phrases.repeated().stream().map(q -> q.value().middle()).toList();
    if (sizes.size() != limbs.size() || sizes.isEmpty()) {
      lacks("its size after each pair of points, such as `Herm to cap C, 40 uF`");
      return null;
    }
    return new Part.Capacitor(name, span(), limbs, sizes);
  }

  private Part state() {
    Optional<Condition> when = condition("when ");
    Optional<Condition> set = condition("set when ");
    int after = may("after rounds").map(b -> (int) b.middle()).orElse(1);
    if (when.isEmpty() && set.isEmpty()) {
      lacks("`when …`, or `set when …` and `reset when …`");
    }
    return new Part.State(name, span(), when.or(() -> set).orElse(Condition.ALWAYS),
        when.isPresent() ? Optional.empty()
            : condition("reset when ").or(() -> Optional.of(new Condition.Not(Condition.ALWAYS))),
        after);
  }

  private void reportLeftOver() {
    phrases.words().forEach(item -> problems.add(UNKNOWN_PARTICULAR, item.span(), "name", item.text()));
    phrases.unasked().forEach(e -> problems.add(UNKNOWN_PARTICULAR, e.getValue().span(), "name", e.getKey()));
    phrases.quantities().forEach((key, quantity) -> reportAbsurd(key, quantity));
    phrases.repeated().forEach(quantity -> reportAbsurd("uF", quantity));
  }

  private void reportAbsurd(String key, PartTokens.Quantity quantity) {
    boolean temperature = key.equals("C");
    boolean wrong = temperature ? quantity.value().low() < -60 || quantity.value().high() > 150
        : !(quantity.value().low() > 0 && quantity.value().high() <= MOST_QUANTITY);
    if (wrong || quantity.value().low() > quantity.value().high()) {
      problems.add(ABSURD_QUANTITY, quantity.span(), "name", name);
    }
  }
}
