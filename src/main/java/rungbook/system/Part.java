package rungbook.system;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.source.Span;

/** One line of a system's {@code parts}. Volts and amps are rms; {@code span} is where the name stands. */
public sealed interface Part {

  /** Resistance of a closed contact, a fuse or a terminal screw (common practice, no source). */
  double CONTACT_OHMS = 0.02;

  String name();

  Span span();

  /** The ways for current that the part is made of. */
  List<PartBranch> limbs();

  default String key() {
    return Names.key(name());
  }

  /** @param legs each an ideal source, its first terminal positive, behind {@code ohms} */
  record Supply(String name, Span span, List<PartBranch> limbs, Interval volts, double hertz, double ohms)
      implements Part {}

  /** Opens for good past its rating; all limbs of a breaker trip together. */
  record Fuse(String name, Span span, List<PartBranch> limbs, double ratedAmps, boolean breaker) implements Part {}

  /** @param opensWith the panel that opens it; a hand switch closes whenever nobody has opened it */
  record Switch(String name, Span span, List<PartBranch> limbs, Condition closedWhen, Optional<String> opensWith)
      implements Part {}

  record Cable(
      String name, Span span, List<PartBranch> limbs, int awg, Interval feet, Interval celsius,
      Interval picofaradsPerFoot,
      Interval picofaradsPerFootToGround) implements Part {}

  record Wire(String name, Span span, List<PartBranch> limbs, double ohms) implements Part {}

  /** Terminals that are one and the same piece of metal. */
  record Joint(String name, Span span, List<PartBranch> limbs) implements Part {}

  /**
   * @param noLoadVolts what the secondary gives with nothing connected and rated volts on the primary
   * @param secondaryOhms what the windings add in series, seen from the secondary
   */
  record Transformer(
      String name, Span span, List<PartBranch> limbs, double primaryVolts, double secondaryVolts, double voltAmps,
      Interval noLoadVolts,
      Interval secondaryOhms) implements Part {}

  /**
   * Anything that draws current and is on when it has enough of it.
   *
   * @param restOhms before it has pulled in or started
   * @param onOhms afterwards
   * @param wireOhms what an ohmmeter sees
   * @param onVolts from here up it comes on
   * @param offVolts below this it goes off
   * @param onlyWhen what else it takes
   */
  record Load(
      String name, Span span, List<PartBranch> limbs, Impedance restOhms, Impedance onOhms, double wireOhms,
      Interval onVolts, Interval offVolts, Condition onlyWhen) implements Part {}

  record Capacitor(String name, Span span, List<PartBranch> limbs, List<Double> microfarads) implements Part {}

  /** Something that is so or not so: a board's intention, a flame, a delay that has run out. */
  record State(String name, Span span, Condition set, Optional<Condition> reset, int after) implements Part {
    @Override
    public List<PartBranch> limbs() {
      return List.of();
    }
  }

  /** Ohms at the supply's frequency. */
  record Impedance(double resistance, double reactance) {

    /** From apparent power, and either the resistance or the power factor. */
    static Impedance of(double volts, double voltAmps, OptionalDouble ohms, double powerFactor) {
      double size = volts * volts / voltAmps;
      double resistance = Math.min(size, ohms.orElse(size * powerFactor));
      return new Impedance(resistance, Math.sqrt(size * size - resistance * resistance));
    }
  }
}
