package rungbook.system.reader;

import static rungbook.system.Interval.exactly;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.Condition;
import rungbook.system.Interval;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartValue;

/** Reads a line of {@code parts} as a {@link Part}. A missing item is reported and replaced by a typical value. */
final class PartReader {

  static final Code ABSURD_QUANTITY = Code.of("absurd-quantity");
  static final Code PART_LACKS = Code.of("part-lacks");
  static final Code UNKNOWN_PART_KIND = Code.of("unknown-part-kind");
  static final Code UNKNOWN_PARTICULAR = Code.of("unknown-particular");

  /** Says that a motor has a run capacitor of its own. */
  static final String WITH_CAPACITOR = "with capacitor";

  /** Says that a switch that has opened stays open until a button resets it. */
  static final String MANUAL_RESET = "manual reset";

  /** Between two conductors of a jacketed control cable (common practice, no source). */
  static final Interval PICOFARADS_PER_FOOT = new Interval(20, 40);

  /** Between a conductor of a control cable and ground (common practice, no source). */
  static final Interval PICOFARADS_PER_FOOT_TO_GROUND = new Interval(3, 8);

  /** IEC 60947-4-1, from memory: AC contactors operate from 85 % and drop out between 20 % and 75 %. */
  private static final double PICKS_UP_SHARE = 0.85;

  private static final double DROPS_OUT_SHARE = 0.5;

  /** Of the impedance of a load whose text gives no range (common practice, no source). */
  private static final double LOAD_TOLERANCE = 0.1;

  private static final double COIL_POWER_FACTOR = 0.4;
  private static final double COIL_INRUSH_POWER_FACTOR = 0.6;
  private static final double MOTOR_POWER_FACTOR = 0.8;

  /** A coil hums from this percentage of its pick-up voltage (common practice, no source). */
  private static final double HUM_PERCENT = 30;

  /** Multiple of its rating that a fuse carries forever (UL 248-14: it opens at 135 % within an hour; from memory). */
  private static final double FUSE_TIMES = 1.35;

  /**
   * Multiple of its rating at which a breaker trips instantly; motor inrush stays below (common practice, no source).
   */
  private static final double BREAKER_TIMES = 5;

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
    double hertz = line.findOne("Hz").orElse(60.0);
    return new Part.Supply(line.name(), line.span(), line.branches(1), nominal, volts, hertz, line.needRange("ohm"));
  }

  static Part fuse(PartLine line) {
    boolean breaker = line.kind().equals("breaker");
    double times = breaker ? line.findOne("trips at times").orElse(BREAKER_TIMES)
        : line.findOne("opens at times").orElse(FUSE_TIMES);
    return new Part.Fuse(line.name(), line.span(), line.branches(1), line.need("A"), times, contactOhms(line), breaker);
  }

  static Part contact(PartLine line) {
    Optional<Condition> written = line.condition("closed when ");
    if (line.kind().equals("contact") && written.isEmpty()) {
      line.lacks("when it is closed, such as `closed when contactor on`");
    }
    Optional<String> panel = line.after("opens with ").map(Names::key);
    return new Part.Switch(line.name(), line.span(), line.branches(1), contactOhms(line),
        written.orElseGet(Condition::always), panel, line.says(MANUAL_RESET));
  }

  private static Interval contactOhms(PartLine line) {
    return line.find("ohm").orElse(exactly(Part.CONTACT_OHMS));
  }

  static Part cable(PartLine line) {
    return new Part.Cable(line.name(), line.span(), line.branches(), (int) line.need("AWG"), line.needRange("ft"),
        line.find("C").orElse(new Interval(0, 50)), line.find("pF/ft").orElse(PICOFARADS_PER_FOOT),
        line.find("pF/ft to ground").orElse(PICOFARADS_PER_FOOT_TO_GROUND));
  }

  static Part wire(PartLine line) {
    return new Part.Wire(line.name(), line.span(), line.branches(1), contactOhms(line));
  }

  static Part joint(PartLine line) {
    return new Part.Joint(line.name(), line.span(), line.branches(1));
  }

  static Part coil(PartLine line) {
    double volts = line.need("V");
    Optional<PartValue> wire = line.findValue("ohm");
    PartValue pulledIn = PartValue.of("VA", line.needRange("VA"));
    var on = new Part.Impedance(volts, pulledIn, wire, powerFactor(line, "pf", COIL_POWER_FACTOR));
    PartValue inrushFactor = powerFactor(line, "pf inrush", COIL_INRUSH_POWER_FACTOR);
    var inrush = line.findValue("VA inrush")
        .map(va -> new Part.Impedance(volts, va, wire, inrushFactor)).orElse(on);
    return load(line, inrush, on, wire, PICKS_UP_SHARE, DROPS_OUT_SHARE);
  }

  static Part motor(PartLine line) {
    line.says(WITH_CAPACITOR); // the vocabulary has it, the circuit does not
    double volts = line.need("V");
    PartValue factor = powerFactor(line, "pf", MOTOR_POWER_FACTOR);
    Part.Impedance on = motor(volts, "A", line.needRange("A"), factor);
    Part.Impedance locked = line.find("A locked").map(amps -> motor(volts, "A locked", amps, factor)).orElse(on);
    return load(line, locked, on, line.findValue("ohm"), 0.6, 0.5);
  }

  private static PartValue powerFactor(PartLine line, String key, double usual) {
    return line.findValue(key).orElse(new PartValue.Rated(usual));
  }

  private static Part.Impedance motor(double volts, String key, Interval amps, PartValue factor) {
    return new Part.Impedance(volts, PartValue.of(key, amps.map(a -> a * volts)), Optional.empty(), factor);
  }

  static Part load(PartLine line) {
    double volts = line.need("V");
    Optional<PartValue> watts = line.findValue("W")
        .or(() -> line.find("kW").map(kilowatts -> PartValue.of("kW", kilowatts.map(kw -> kw * 1000))));
    PartValue voltAmps = watts.or(() -> line.findValue("VA")).orElseGet(() -> {
      line.lacks("a quantity in VA, W or kW");
      return new PartValue.Rated(1);
    });
    PartValue factor = watts.isPresent() ? new PartValue.Rated(1) : powerFactor(line, "pf", 1);
    var ohms = new Part.Impedance(volts, voltAmps, Optional.empty(), factor);
    return load(line, ohms, ohms, line.findValue("ohm"), 0.7, 0.6);
  }

  private static Part load(PartLine line, Part.Impedance inrush, Part.Impedance on, Optional<PartValue> wireOhms,
      double onShare, double offShare) {
    double volts = on.volts();
    Interval onVolts = line.find("picks up at V").or(() -> line.find("works above V")).orElse(exactly(volts * onShare));
    Interval offVolts = line.find("drops out at V").orElse(exactly(Math.min(onVolts.low(), volts * offShare)));
    Condition only = line.condition("only when ").orElseGet(Condition::always);
    return new Part.Load(line.name(), line.span(), line.branches(1), inrush, on, wireOhms,
        line.tolerance(LOAD_TOLERANCE), onVolts, offVolts, line.findOne("hums from %").orElse(HUM_PERCENT) / 100, only);
  }

  /** One number has the tolerance of the line, none if the line states none. */
  static Part capacitor(PartLine line) {
    double share = line.tolerance(0);
    List<Interval> sizes = line.microfarads().stream()
        .map(size -> size.low() == size.high() ? Interval.around(size.low(), share) : size).toList();
    return new Part.Capacitor(line.name(), line.span(), line.branches(), sizes);
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
    int after = line.findOne("after rounds").map(Double::intValue).orElse(1);
    if (when.isPresent()) {
      return new Part.State(line.name(), line.span(), when.get(), Optional.empty(), after, delay(line));
    }
    if (set.isEmpty()) {
      line.lacks("`when …`, or `set when …` and `reset when …`");
    }
    Optional<Condition> reset = line.condition("reset when ");
    if (set.isPresent() && reset.isEmpty()) {
      line.lacks("when it is reset, such as `reset when not control board on`: it holds from one step to the next");
    }
    return new Part.State(line.name(), line.span(), set.orElseGet(Condition::always),
        reset.or(() -> Optional.of(Condition.never())), after, Optional.empty());
  }

  private static Optional<Part.Delay> delay(PartLine line) {
    int on = line.seconds("on after");
    int off = line.seconds("off after");
    return on > 0 || off > 0 ? Optional.of(new Part.Delay(on, off)) : Optional.empty();
  }
}
