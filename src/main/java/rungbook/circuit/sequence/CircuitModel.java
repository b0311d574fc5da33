package rungbook.circuit.sequence;

import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.NetworkFactory;

/** A network with its sampled parameters, its relay logic, and a factory for each kind of current. */
public final class CircuitModel {

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final RelayLogic logic;
  private final NetworkFactory alternating;
  private final NetworkFactory direct;

  public CircuitModel(CircuitNetwork network, Samples samples) {
    this.network = network;
    this.parameters = new SampledParameters(network, samples);
    this.logic = new RelayLogic(network);
    this.alternating = new NetworkFactory(network, parameters, Current.ALTERNATING);
    this.direct = new NetworkFactory(network, parameters, Current.DIRECT);
  }

  public CircuitNetwork network() {
    return network;
  }

  public SampledParameters parameters() {
    return parameters;
  }

  public RelayLogic logic() {
    return logic;
  }

  NetworkFactory alternating() {
    return alternating;
  }

  NetworkFactory direct() {
    return direct;
  }
}
