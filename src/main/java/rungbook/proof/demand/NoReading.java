package rungbook.proof.demand;

import rungbook.circuit.Reading;

/** Why a meter shows no number that says anything of the circuit. */
public enum NoReading {
  /** Nothing at all connects the two points, not even a capacitance. */
  FLOATING,
  /** The circuit never settles. */
  UNSTEADY,
  /** Ohms or microfarads on a circuit that is live. */
  LIVE,
  /** No current passes: an ohmmeter shows OL. */
  OPEN,
  /** The circuit has no such quantity. */
  NOT_SIMULATED,
  /** No part of the circuit ends at one of the points. */
  NOT_WIRED;

  /** @param code a reading that is no number, coded as in {@link Reading} */
  static NoReading of(double code) {
    return code == Reading.UNSTEADY ? UNSTEADY : code == Reading.LIVE ? LIVE : code == Reading.FLOATING ? FLOATING
        : OPEN;
  }
}
