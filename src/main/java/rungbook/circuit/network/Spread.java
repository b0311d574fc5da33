package rungbook.circuit.network;

import rungbook.system.Interval;

/**
 * How bad a fault is, or a quantity outside the circuit, drawn for each installation.
 *
 * @param key the draw's key: the fault's key and the number of its effect, or the quantity's key
 */
public record Spread(Interval range, String key) {

  public double at(Draw draw) {
    return range.at(draw.at(Tolerance.FAULT, key));
  }
}
