package rungbook.system.reader;

import static rungbook.system.Interval.exactly;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.source.Code;
import rungbook.system.Interval;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.PowerLimit;

/** Reads a line of {@code parts} as a transformer. */
final class TransformerReader {

  static final Code REGULATION_WITHOUT_BASIS = Code.of("regulation-without-basis");
  static final Code WINDING_NOT_MODELED = Code.of("winding-not-modeled");

  /** Without load, a small transformer draws this share of its rating (common practice, no source). */
  private static final double MAGNETIZING_PERCENT = 15;

  private static final double MAGNETIZING_POWER_FACTOR = 0.4;

  /** Reactance over resistance of a small transformer (common practice, no source). */
  private static final double REACTANCE_SHARE = 0.3;

  /** Between the windings of a 40 VA transformer (common practice, no source). */
  private static final double WINDINGS_PICOFARADS = 100;

  private TransformerReader() {}

  static Part read(PartLine line) {
    double secondary = line.need("V secondary");
    double voltAmps = line.need("VA");
    Interval noLoad = noLoadVolts(line, secondary);
    double fullAmps = voltAmps / secondary;
    var ohms = new Interval((noLoad.low() - secondary) / fullAmps, (noLoad.high() - secondary) / fullAmps);
    return new Part.Transformer(line.name(), line.span(), windings(line), line.need("V primary"), secondary, voltAmps,
        noLoad, ohms, core(line), powerLimit(line));
  }

  private static Part.Core core(PartLine line) {
    return new Part.Core(line.findOne("% magnetizing").orElse(MAGNETIZING_PERCENT) / 100,
        line.findOne("pf magnetizing").orElse(MAGNETIZING_POWER_FACTOR),
        line.findOne("X/R").orElse(REACTANCE_SHARE), line.findOne("pF between windings").orElse(WINDINGS_PICOFARADS));
  }

  private static PowerLimit powerLimit(PartLine line) {
    boolean class1 = line.says("class 1");
    boolean inherent = line.says("inherently limited");
    return class1 ? PowerLimit.CLASS_1 : inherent ? PowerLimit.INHERENT : PowerLimit.FUSE;
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
    if (pairs.size() > sides.size()) {
      line.report(WINDING_NOT_MODELED);
    }
    return IntStream.range(0, Math.min(sides.size(), pairs.size()))
        .mapToObj(i -> new PartBranch(line.name() + " " + sides.get(i), pairs.get(i).a(), pairs.get(i).b())).toList();
  }
}
