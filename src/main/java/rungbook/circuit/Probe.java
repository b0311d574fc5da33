package rungbook.circuit;

import rungbook.circuit.network.Phasor;
import rungbook.system.Terminal;

/**
 * Where a meter is put and how it is set. A clamp goes around the wire that ends at {@code red}; {@code black} is then
 * the same.
 *
 * @param inputOhms what this meter puts between its leads on the volts scales
 */
public record Probe(MeterFunction meter, double inputOhms, Terminal red, Terminal black) {

  /** What the meter adds between its leads, siemens. */
  Phasor admittance(double hertz) {
    return meter.admittance(inputOhms, hertz);
  }
}
