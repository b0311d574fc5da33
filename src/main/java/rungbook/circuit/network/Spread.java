package rungbook.circuit.network;

import rungbook.system.Interval;

/**
 * How bad a fault is, drawn for each installation.
 *
 * @param key the draw's key: the fault's key and the number of its effect
 */
public record Spread(Interval range, String key) {

  public double at(Draw draw) {
    return range.at(draw.at(Tolerance.FAULT, key));
  }
}
