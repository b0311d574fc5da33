package rungbook.circuit.solver;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.SourceBranch;

/**
 * Solves networks of one block of samples, one after the other: the healthy network of a relay state from the one
 * before it, and that of a fault from the healthy one. Both times only what differs is eliminated again.
 */
public final class NetworkSolver {

  private final CircuitNetwork network;
  private final Current current;
  private final FaultedParameters healthy;
  private final NetworkAssembly base;
  private final NetworkAssembly changed;
  private final UnitCurrents unitCurrents;
  private final EliminationOrder order;
  private int[] backward;
  private byte[] modes;
  private ConnectedComponents components;

  /** @param wanted the nodes whose voltages are asked for */
  public NetworkSolver(NetworkStructure structure, SampledParameters parameters, Current current,
      FaultedParameters healthy, BitSet wanted) {
    this.network = structure.network();
    this.current = current;
    this.healthy = healthy;
    var admittances = new Admittances(parameters, current);
    var cores = new CoreStamps(network, parameters, current);
    base = new NetworkAssembly(structure, admittances, cores, healthy, parameters.size());
    changed = new NetworkAssembly(structure, admittances, cores, healthy, parameters.size());
    unitCurrents = new UnitCurrents(changed.factorized(), parameters.size());
    order = structure.order();
    backward = order.backward(wanted);
    modes = new byte[network.branches().size()];
    components = base.components();
    base.tie(components.floating());
    base.factorized().factor();
  }

  /** From now on, the voltages of these nodes are asked for. */
  public void want(BitSet nodes) {
    backward = order.backward(nodes);
  }

  /** Makes the healthy network that of these modes. */
  public void moveTo(byte[] next) {
    if (Arrays.equals(next, modes)) {
      return;
    }
    base.configure(next, healthy);
    for (int i = 0; i < next.length; i++) {
      if (next[i] != modes[i]) {
        Branch branch = network.branches().get(i);
        base.assemble(branch.a(), branch.b());
      }
    }
    if (current == Current.ALTERNATING && network.sources().stream().anyMatch(source -> changes(source, next))) {
      base.assembleSources();
    }
    modes = next;
    components = base.components();
    base.tie(components.floating());
    base.factorized().factor();
  }

  private boolean changes(SourceBranch source, byte[] next) {
    return next[source.branch()] != modes[source.branch()];
  }

  /** Solves the network of the present modes with a fault. */
  public SolvedNetwork solve(FaultedParameters faulted) {
    changed.become(base);
    changed.configure(modes, faulted);
    ConnectedComponents now = components;
    if (faulted.fault().changes().size() > 0) {
      assemble(faulted);
      now = changed.components();
      changed.tie(now.floating());
    }
    if (current == Current.ALTERNATING && faulted.currents() != healthy.currents()) {
      changed.assembleSources();
    }
    changed.factorized().factor();
    unitCurrents.clear();
    return new SolvedNetwork(changed.factorized().volts(backward), unitCurrents, now);
  }

  private void assemble(FaultedParameters faulted) {
    List<Branch> branches = network.branches();
    faulted.touched().stream().forEach(i -> changed.assemble(branches.get(i).a(), branches.get(i).b()));
    faulted.extras().forEach(extra -> changed.assemble(extra.siemens().a(), extra.siemens().b()));
    faulted.cores().forEach(core -> changed.assemble(network.cores().get(core)));
  }
}
