package rungbook.circuit.sequence;

import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.NetworkFactory;

/** A wired system with its samples, its logic and its two kinds of network. */
public final class CircuitModel {

  private final CircuitNetwork wiring;
  private final SampledParameters sampled;
  private final RelayLogic logic;
  private final NetworkFactory alternating;
  private final NetworkFactory direct;

  public CircuitModel(CircuitNetwork wiring, Samples samples) {
    this.wiring = wiring;
    this.sampled = new SampledParameters(wiring, samples);
    this.logic = new RelayLogic(wiring);
    this.alternating = new NetworkFactory(wiring, sampled, Current.ALTERNATING);
    this.direct = new NetworkFactory(wiring, sampled, Current.DIRECT);
  }

  public CircuitNetwork wiring() {
    return wiring;
  }

  public SampledParameters sampled() {
    return sampled;
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
