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

  /** The meter's admittance between its leads, siemens. */
  Phasor admittance(double hertz) {
    return meter.admittance(inputOhms, hertz);
  }
}
