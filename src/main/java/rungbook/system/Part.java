package rungbook.system;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.source.Span;

/** One line of a system's {@code parts}. Volts and amps are rms; {@code span} is the position of the name. */
public sealed interface Part {

  /** Resistance of a closed contact, a fuse or a terminal screw (common practice, no source). */
  double CONTACT_OHMS = 0.02;

  String name();

  Span span();

  /** The branches that the part consists of. */
  List<PartBranch> branches();

  default String key() {
    return Names.key(name());
  }

  /**
   * A power source.
   *
   * @param branches each an ideal source with {@code ohms} in series; its first terminal is positive
   * @param volts in which the voltage of a leg may be
   */
  record Supply(
      String name, Span span, List<PartBranch> branches, double nominalVolts, Interval volts, double hertz, double ohms)
      implements Part {}

  /** A fuse or breaker. It opens above its rating and stays open; all branches of a breaker trip together. */
  record Fuse(String name, Span span, List<PartBranch> branches, double ratedAmps, boolean breaker) implements Part {}

  /**
   * A contact or switch.
   *
   * @param closedWhen always for a hand switch
   * @param opensWith the panel that opens it
   */
  record Switch(String name, Span span, List<PartBranch> branches, Condition closedWhen, Optional<String> opensWith)
      implements Part {}

  record Cable(
      String name, Span span, List<PartBranch> branches, int awg, Interval feet, Interval celsius,
      Interval picofaradsPerFoot,
      Interval picofaradsPerFootToGround) implements Part {}

  record Wire(String name, Span span, List<PartBranch> branches, double ohms) implements Part {}

  /** Terminals that are one electrical node. */
  record Joint(String name, Span span, List<PartBranch> branches) implements Part {}

  /**
   * A transformer.
   *
   * @param noLoadVolts secondary volts without load at rated primary volts
   * @param secondaryOhms series resistance of both windings, referred to the secondary
   */
  record Transformer(
      String name, Span span, List<PartBranch> branches, double primaryVolts, double secondaryVolts, double voltAmps,
      Interval noLoadVolts,
      Interval secondaryOhms) implements Part {}

  /**
   * A load: coil, motor, board or heater.
   *
   * @param inrushOhms before it has pulled in or started
   * @param onOhms after it has pulled in or started
   * @param wireOhms resistance for direct current
   * @param onVolts pick-up voltage
   * @param offVolts drop-out voltage
   * @param onlyWhen a further condition for coming on
   */
  record Load(
      String name, Span span, List<PartBranch> branches, Impedance inrushOhms, Impedance onOhms, double wireOhms,
      Interval onVolts, Interval offVolts, Condition onlyWhen) implements Part {}

  record Capacitor(String name, Span span, List<PartBranch> branches, List<Double> microfarads) implements Part {}

  /**
   * A state that is on or off: a board's call, a flame, an expired delay.
   *
   * @param after rounds for which {@code set} must hold
   */
  record State(String name, Span span, Condition set, Optional<Condition> reset, int after) implements Part {
    @Override
    public List<PartBranch> branches() {
      return List.of();
    }
  }

  /** An impedance at the supply's frequency, ohms. */
  record Impedance(double resistance, double reactance) {

    /** |Z| = V² / VA; the resistance is given, or |Z| times the power factor. */
    public static Impedance of(double volts, double voltAmps, OptionalDouble ohms, double powerFactor) {
      double size = volts * volts / voltAmps;
      double resistance = Math.min(size, ohms.orElse(size * powerFactor));
      return new Impedance(resistance, Math.sqrt(size * size - resistance * resistance));
    }
  }
}
