package rungbook.circuit.network;

import rungbook.system.Part;
import rungbook.system.PartValue;

/**
 * The impedances of a load in one installation. A quantity with a range has a draw of its own; all others follow one
 * factor, by which the impedances are multiplied.
 */
final class LoadDraw {

  private final Part.Load load;
  private final Draw draw;
  private final double factor;

  LoadDraw(Part.Load load, Draw draw) {
    this.load = load;
    this.draw = draw;
    this.factor = 1 + load.tolerance() * draw.at(Tolerance.LOAD, load.key());
  }

  /** Siemens at the supply's frequency. */
  Phasor siemens(Part.Impedance impedance) {
    double size = size(impedance);
    double resistance = resistance(impedance);
    return new Phasor(resistance, Math.sqrt(size * size - resistance * resistance)).inverse();
  }

  /** |Z| = V² / VA. A high draw is a high impedance, so that a corner has all loads light or all heavy. */
  private double size(Part.Impedance impedance) {
    return impedance.volts() * impedance.volts() / value(impedance.voltAmps(), 1 / factor, -1);
  }

  private double resistance(Part.Impedance impedance) {
    double size = size(impedance);
    double given = impedance.ohms().map(ohms -> value(ohms, factor, 1))
        .orElseGet(() -> size * value(impedance.powerFactor(), 1, 1));
    return Math.min(size, given);
  }

  /** Ohms for direct current. */
  double wireOhms() {
    return load.wireOhms().map(ohms -> value(ohms, factor, 1))
        .orElseGet(() -> Math.min(resistance(load.on()), resistance(load.inrush())));
  }

  /**
   * @param follows what a quantity without a range is multiplied by
   * @param sign of the draw of a quantity with a range
   */
  private double value(PartValue quantity, double follows, int sign) {
    if (quantity instanceof PartValue.Ranged ranged) {
      return ranged.range().at(sign * draw.at(Tolerance.LOAD, load.key() + " " + ranged.name()));
    }
    return ((PartValue.Rated) quantity).value() * follows;
  }
}
