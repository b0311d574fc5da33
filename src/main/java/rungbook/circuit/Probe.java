package rungbook.circuit;

import rungbook.circuit.network.Phasor;
import rungbook.system.Terminal;

/**
 * A meter function and where the leads are. A clamp goes around the wire that ends at {@code red}; {@code black} is
 * then the same terminal.
 *
 * @param inputOhms the meter's input resistance on the volts functions
 */
public record Probe(MeterFunction meter, double inputOhms, Terminal red, Terminal black) {

  /**
   * What is measured outside the circuit. Both terminals have its key instead of a point's, and no place.
   *
   * @param quantity its key
   */
  public static Probe outside(String quantity) {
    var nowhere = new Terminal(quantity, "");
    return new Probe(MeterFunction.OUTSIDE, MeterFunction.OUTSIDE.usualOhms(), nowhere, nowhere);
  }

  /** The key of what is measured outside the circuit. */
  public String quantity() {
    return red.point();
  }

  /** Whether it measures something outside the circuit. */
  public boolean isOutside() {
    return meter == MeterFunction.OUTSIDE;
  }

  /** The meter's admittance between its leads, siemens. */
  Phasor admittance(double hertz) {
    return meter.admittance(inputOhms, hertz);
  }
}
