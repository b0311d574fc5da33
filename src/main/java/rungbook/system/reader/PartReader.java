package rungbook.system.reader;

import static rungbook.system.Interval.exactly;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.Condition;
import rungbook.system.Interval;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartBranch;

/** Reads a line of {@code parts} as a {@link Part}. A missing item is reported and replaced by a typical value. */
final class PartReader {

  static final Code ABSURD_QUANTITY = Code.of("absurd-quantity");
  static final Code PART_LACKS = Code.of("part-lacks");
  static final Code REGULATION_WITHOUT_BASIS = Code.of("regulation-without-basis");
  static final Code UNKNOWN_PART_KIND = Code.of("unknown-part-kind");
  static final Code UNKNOWN_PARTICULAR = Code.of("unknown-particular");

  /** Between two conductors of a jacketed control cable (common practice, no source). */
  static final Interval PICOFARADS_PER_FOOT = new Interval(20, 40);

  /** Between a conductor of a control cable and ground (common practice, no source). */
  static final Interval PICOFARADS_PER_FOOT_TO_GROUND = new Interval(3, 8);

  /** IEC 60947-4-1, from memory: AC contactors operate from 85 % and drop out between 20 % and 75 %. */
  private static final double PICKS_UP_SHARE = 0.85;

  private static final double DROPS_OUT_SHARE = 0.5;

  private final Terminals terminals;
  private final ConditionReader conditions;
  private final SystemProblems problems;

  PartReader(Terminals terminals, ConditionReader conditions, SystemProblems problems) {
    this.terminals = terminals;
    this.conditions = conditions;
    this.problems = problems;
  }

  Optional<Part> read(Entry entry) {
    var line = new PartLine(entry, terminals, conditions, problems);
    Optional<PartKind> kind = PartKind.of(entry);
    if (kind.isEmpty()) {
      problems.unknownAmong(UNKNOWN_PART_KIND, entry.items().get(0).span(), line.kind(), PartKind.words());
      return Optional.empty();
    }
    if (kind.get() == PartKind.CAPACITOR && lacksSizes(line)) {
      return Optional.empty();
    }
    Part part = kind.get().read(line);
    line.reportLeftOver();
    return Optional.of(part);
  }

  static Part supply(PartLine line) {
    double nominal = line.need("V");
    Interval volts = line.find("from V").orElse(exactly(nominal));
    double hertz = line.findMiddle("Hz").orElse(60);
    return new Part.Supply(line.name(), line.span(), line.branches(1), nominal, volts, hertz, line.need("ohm"));
  }

  static Part fuse(PartLine line) {
    return new Part.Fuse(line.name(), line.span(), line.branches(1), line.need("A"), line.kind().equals("breaker"));
  }

  static Part contact(PartLine line) {
    Optional<Condition> written = line.condition("closed when ");
    if (line.kind().equals("contact") && written.isEmpty()) {
      line.lacks("when it is closed, such as `closed when contactor on`");
    }
    Optional<String> panel = line.after("opens with ").map(Names::key);
    return new Part.Switch(line.name(), line.span(), line.branches(1), written.orElseGet(Condition::always), panel);
  }

  static Part cable(PartLine line) {
    return new Part.Cable(line.name(), line.span(), line.branches(), (int) line.need("AWG"), line.needRange("ft"),
        line.find("C").orElse(new Interval(0, 50)), line.find("pF/ft").orElse(PICOFARADS_PER_FOOT),
        line.find("pF/ft to ground").orElse(PICOFARADS_PER_FOOT_TO_GROUND));
  }

  static Part wire(PartLine line) {
    double ohms = line.findMiddle("ohm").orElse(Part.CONTACT_OHMS);
    return new Part.Wire(line.name(), line.span(), line.branches(1), ohms);
  }

  static Part joint(PartLine line) {
    return new Part.Joint(line.name(), line.span(), line.branches(1));
  }

  static Part transformer(PartLine line) {
    double secondary = line.need("V secondary");
    double voltAmps = line.need("VA");
    Interval noLoad = noLoadVolts(line, secondary);
    double fullAmps = voltAmps / secondary;
    var ohms = new Interval((noLoad.low() - secondary) / fullAmps, (noLoad.high() - secondary) / fullAmps);
    return new Part.Transformer(line.name(), line.span(), windings(line), line.need("V primary"), secondary, voltAmps,
        noLoad, ohms);
  }

  /** Regulation r of full load: V (1 + r); of no load: V / (1 − r). */
  private static Interval noLoadVolts(PartLine line, double secondary) {
    Optional<Interval> ofFull = line.find("regulation % of full load");
    Optional<Interval> ofNone = line.find("regulation % of no load");
    if (ofFull.isEmpty() && ofNone.isEmpty()) {
      line.find("regulation %");
      line.report(REGULATION_WITHOUT_BASIS);
    }
    Interval percent = ofFull.orElse(exactly(10));
    return ofNone.map(r -> new Interval(secondary / (1 - r.low() / 100), secondary / (1 - r.high() / 100)))
        .orElseGet(() -> new Interval(secondary * (1 + percent.low() / 100), secondary * (1 + percent.high() / 100)));
  }

  private static List<PartBranch> windings(PartLine line) {
    List<PartBranch> pairs = line.branches(2);
    List<String> sides = List.of("primary", "secondary");
    return IntStream.range(0, Math.min(sides.size(), pairs.size()))
        .mapToObj(i -> new PartBranch(line.name() + " " + sides.get(i), pairs.get(i).a(), pairs.get(i).b())).toList();
  }

  static Part coil(PartLine line) {
    double volts = line.need("V");
    OptionalDouble wire = line.findMiddle("ohm");
    var on = Part.Impedance.of(volts, line.need("VA"), wire, 0.4);
    var inrush = line.find("VA inrush").map(va -> Part.Impedance.of(volts, va.middle(), wire, 0.6)).orElse(on);
    return load(line, volts, inrush, on, wire.orElse(on.resistance()), PICKS_UP_SHARE, DROPS_OUT_SHARE);
  }

  static Part motor(PartLine line) {
    double volts = line.need("V");
    double factor = line.findMiddle("pf").orElse(0.8);
    OptionalDouble wire = line.findMiddle("ohm");
    var on = Part.Impedance.of(volts, volts * line.need("A"), OptionalDouble.empty(), factor);
    var inrush = line.find("A locked")
        .map(amps -> Part.Impedance.of(volts, volts * amps.middle(), OptionalDouble.empty(), factor)).orElse(on);
    return load(line, volts, inrush, on, wire.orElse(Math.min(on.resistance(), inrush.resistance())), 0.6, 0.5);
  }

  static Part load(PartLine line) {
    double volts = line.need("V");
    Optional<Interval> watts = line.find("W")
        .or(() -> line.find("kW").map(kilowatts -> new Interval(kilowatts.low() * 1000, kilowatts.high() * 1000)));
    double voltAmps = watts.or(() -> line.find("VA")).map(Interval::middle).orElseGet(() -> {
      line.lacks("a quantity in VA, W or kW");
      return 1.0;
    });
    double factor = watts.isPresent() ? 1 : line.findMiddle("pf").orElse(1);
    var ohms = Part.Impedance.of(volts, voltAmps, OptionalDouble.empty(), factor);
    return load(line, volts, ohms, ohms, line.findMiddle("ohm").orElse(ohms.resistance()), 0.7, 0.6);
  }

  private static Part load(PartLine line, double volts, Part.Impedance inrush, Part.Impedance on, double wireOhms,
      double onShare, double offShare) {
    Interval onVolts = line.find("picks up at V").or(() -> line.find("works above V")).orElse(exactly(volts * onShare));
    Interval offVolts = line.find("drops out at V").orElse(exactly(Math.min(onVolts.low(), volts * offShare)));
    Condition only = line.condition("only when ").orElseGet(Condition::always);
    return new Part.Load(line.name(), line.span(), line.branches(1), inrush, on, wireOhms, onVolts, offVolts, only);
  }

  static Part capacitor(PartLine line) {
    return new Part.Capacitor(line.name(), line.span(), line.branches(), line.microfarads());
  }

  private static boolean lacksSizes(PartLine line) {
    int sizes = line.microfarads().size();
    if (sizes == line.branches().size() && sizes > 0) {
      return false;
    }
    line.lacks("its size after each pair of points, such as `Herm to cap C, 40 uF`");
    return true;
  }

  static Part state(PartLine line) {
    Optional<Condition> when = line.condition("when ");
    Optional<Condition> set = line.condition("set when ");
    int after = line.find("after rounds").map(rounds -> (int) rounds.middle()).orElse(1);
    if (when.isPresent()) {
      return new Part.State(line.name(), line.span(), when.get(), Optional.empty(), after);
    }
    if (set.isEmpty()) {
      line.lacks("`when …`, or `set when …` and `reset when …`");
    }
    Condition reset = line.condition("reset when ").orElseGet(() -> new Condition.Not(Condition.always()));
    return new Part.State(line.name(), line.span(), set.orElseGet(Condition::always), Optional.of(reset), after);
  }
}
