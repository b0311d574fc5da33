package rungbook.system;

import java.util.List;
import java.util.Optional;
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
      String name, Span span, List<PartBranch> branches, double nominalVolts, Interval volts, double hertz,
      Interval ohms)
      implements Part {}

  /**
   * A fuse or breaker. It opens above a multiple of its rating and stays open; all branches of a breaker trip together.
   */
  record Fuse(
      String name, Span span, List<PartBranch> branches, double ratedAmps, double opensAtTimes, Interval ohms,
      boolean breaker) implements Part {}

  /**
   * A contact or switch.
   *
   * @param ohms while it is closed
   * @param closedWhen always for a hand switch
   * @param opensWith the panel that opens it
   * @param manualReset whether it stays open, once it has opened, until somebody resets it
   */
  record Switch(
      String name, Span span, List<PartBranch> branches, Interval ohms, Condition closedWhen,
      Optional<String> opensWith, boolean manualReset) implements Part {}

  record Cable(
      String name, Span span, List<PartBranch> branches, int awg, Interval feet, Interval celsius,
      Interval picofaradsPerFoot,
      Interval picofaradsPerFootToGround) implements Part {}

  record Wire(String name, Span span, List<PartBranch> branches, Interval ohms) implements Part {}

  /** Terminals that are one electrical node. */
  record Joint(String name, Span span, List<PartBranch> branches) implements Part {}

  /**
   * A transformer.
   *
   * @param noLoadVolts secondary volts without load at rated primary volts
   * @param secondaryOhms series resistance of both windings, referred to the secondary
   * @param limit what limits the power of its secondary
   */
  record Transformer(
      String name, Span span, List<PartBranch> branches, double primaryVolts, double secondaryVolts, double voltAmps,
      Interval noLoadVolts, Interval secondaryOhms, Core core, PowerLimit limit) implements Part {}

  /**
   * What a transformer's nameplate does not say.
   *
   * @param magnetizingShare the share of its rated volt-amperes that it draws without load
   * @param reactanceShare leakage reactance over winding resistance
   * @param picofarads between its windings
   */
  record Core(double magnetizingShare, double magnetizingPowerFactor, double reactanceShare, double picofarads) {}

  /**
   * A load: coil, motor, board or heater.
   *
   * @param inrush before it has pulled in or started
   * @param on after it has pulled in or started
   * @param wireOhms resistance for direct current; empty for the least resistance of the two impedances
   * @param tolerance of its impedances, a share: of every quantity without a range
   * @param onVolts pick-up voltage
   * @param offVolts drop-out voltage
   * @param humShare the share of the pick-up voltage from which it hums
   * @param onlyWhen a further condition for coming on
   */
  record Load(
      String name, Span span, List<PartBranch> branches, Impedance inrush, Impedance on, Optional<PartValue> wireOhms,
      double tolerance, Interval onVolts, Interval offVolts, double humShare, Condition onlyWhen)
      implements Part {}

  record Capacitor(String name, Span span, List<PartBranch> branches, List<Interval> microfarads) implements Part {}

  /**
   * A state that is on or off: a board's call, a flame, an expired delay.
   *
   * @param after rounds for which {@code set} must hold
   * @param delay of a timer
   */
  record State(
      String name, Span span, Condition set, Optional<Condition> reset, int after, Optional<Delay> delay)
      implements Part {
    @Override
    public List<PartBranch> branches() {
      return List.of();
    }
  }

  /** For how many seconds a timer's condition must hold before it comes on, and must not before it goes off. */
  record Delay(int onSeconds, int offSeconds) {}

  /**
   * An impedance at the supply's frequency: |Z| = V² / VA, and its resistance is the given ohms, or else |Z| times the
   * power factor.
   */
  record Impedance(double volts, PartValue voltAmps, Optional<PartValue> ohms, PartValue powerFactor) {}
}
