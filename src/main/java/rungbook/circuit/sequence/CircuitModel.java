package rungbook.circuit.sequence;

import java.util.BitSet;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.FaultedParameters;

/** A network with the sampled parameters of one block of installations, and its relay logic. */
public final class CircuitModel {

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final RelayLogic logic;
  private final FaultedParameters healthy;

  /** @param logic of the same network; blocks share it */
  public CircuitModel(CircuitNetwork network, RelayLogic logic, Samples samples) {
    this.network = network;
    this.parameters = new SampledParameters(network, samples);
    this.logic = logic;
    this.healthy = faulted(FaultCase.HEALTHY);
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

  public FaultedParameters healthy() {
    return healthy;
  }

  public FaultedParameters faulted(FaultCase fault) {
    return new FaultedParameters(network, parameters, fault);
  }

  /** The nodes whose voltages decide what loads and fuses do. */
  public static BitSet decisiveNodes(CircuitNetwork network) {
    var nodes = new BitSet();
    network.branches().stream()
        .filter(branch -> branch.kind() == Branch.Kind.LOAD || branch.kind() == Branch.Kind.FUSE).forEach(branch -> {
          nodes.set(branch.a());
          nodes.set(branch.b());
        });
    return nodes;
  }
}
