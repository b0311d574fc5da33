package rungbook.system;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.source.Span;

/** One line of a system's {@code parts}. Volts and amps are rms; {@code span} is where the name stands. */
public sealed interface Part {

  String name();

  Span span();

  /** The ways for current that the part is made of. */
  List<Limb> limbs();

  default String key() {
    return Names.key(name());
  }

  /** @param legs each an ideal source, its first terminal positive, behind {@code ohms} */
  record Supply(String name, Span span, List<Limb> limbs, Between volts, double hertz, double ohms)
      implements Part {}

  /** Opens for good past its rating; all limbs of a breaker trip together. */
  record Fuse(String name, Span span, List<Limb> limbs, double ratedAmps, boolean breaker) implements Part {}

  /** @param opensWith the panel that opens it; a hand switch closes whenever nobody has opened it */
  record Switch(String name, Span span, List<Limb> limbs, Condition closedWhen, Optional<String> opensWith) implements Part {}

  record Cable(
      String name, Span span, List<Limb> limbs, int awg, Between feet, Between celsius, Between picofaradsPerFoot,
      Between picofaradsPerFootToGround) implements Part {}

  record Wire(String name, Span span, List<Limb> limbs, double ohms) implements Part {}

  /** Terminals that are one and the same piece of metal. */
  record Joint(String name, Span span, List<Limb> limbs) implements Part {}

  /**
   * @param noLoadVolts what the secondary gives with nothing connected and rated volts on the primary
   * @param secondaryOhms what the windings add in series, seen from the secondary
   */
  record Transformer(
      String name, Span span, List<Limb> limbs, double primaryVolts, double secondaryVolts, double voltAmps, Between noLoadVolts,
      Between secondaryOhms) implements Part {}

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
      String name, Span span, List<Limb> limbs, Impedance restOhms, Impedance onOhms, double wireOhms,
      Between onVolts, Between offVolts, Condition onlyWhen) implements Part {}

  record Capacitor(String name, Span span, List<Limb> limbs, List<Double> microfarads) implements Part {}

  /** Something that is so or not so: a board's intention, a flame, a delay that has run out. */
  record State(String name, Span span, Condition set, Optional<Condition> reset, int after) implements Part {
    @Override
    public List<Limb> limbs() {
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
