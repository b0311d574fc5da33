package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.SampledParameters;

/** The admittance of each branch for one kind of current. */
final class Admittances {

  private final SampledParameters parameters;
  private final Current current;

  Admittances(SampledParameters parameters, Current current) {
    this.parameters = parameters;
    this.current = current;
  }

  /** The admittances of all branches in a mode, [branch][sample]. */
  ComplexRows of(byte mode) {
    return current == Current.DIRECT ? parameters.direct : parameters.alternating(mode);
  }

  /** Whether a branch conducts this current at all; a capacitance conducts no direct current. */
  boolean conducts(int branch) {
    return current == Current.ALTERNATING || parameters.direct.re[branch][0] != 0;
  }
}
