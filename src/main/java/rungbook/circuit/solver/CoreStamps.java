package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.TransformerCore;

/** The admittances between the nodes of each transformer core, healthy or changed by a fault. */
public final class CoreStamps {

  private final List<TransformerCore> cores;
  private final SampledParameters parameters;
  private final Current current;
  private final Map<Changed, List<BranchAdmittance>> known = new HashMap<>();

  private record Changed(int core, List<NetworkChange.Core> changes) {

    double ratio(TransformerCore of, Draw draw) {
      return changes.stream().mapToDouble(NetworkChange.Core::timesRatio)
          .reduce(of.ratio().applyAsDouble(draw), (ratio, times) -> ratio * times);
    }

    double ohms(TransformerCore of, Draw draw) {
      return changes.stream().mapToDouble(change -> change.timesOhms().at(draw))
          .reduce(of.ohms().applyAsDouble(draw), (ohms, times) -> ohms * times);
    }
  }

  public CoreStamps(CircuitNetwork network, SampledParameters parameters, Current current) {
    this.cores = network.cores();
    this.parameters = parameters;
    this.current = current;
  }

  /** @param changes what changes the core; none if it is as it was built */
  public List<BranchAdmittance> of(int core, List<NetworkChange.Core> changes) {
    return known.computeIfAbsent(new Changed(core, changes), this::evaluate);
  }

  private List<BranchAdmittance> evaluate(Changed changed) {
    TransformerCore core = cores.get(changed.core());
    if (current == Current.DIRECT) {
      // for direct current the windings are two separate resistances
      return List.of(row(core.pa(), core.pb(), draw -> Phasor.of(core.directPrimary())),
          row(core.sa(), core.sb(), draw -> Phasor.of(1 / changed.ohms(core, draw))));
    }
    int[] nodes = core.nodes();
    var between = new ArrayList<BranchAdmittance>();
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        int p = i;
        int q = j;
        between.add(row(nodes[i], nodes[j], draw -> mutual(core, changed, draw, p, q)));
      }
    }
    return between;
  }

  /** −y u_i u_j, the admittance between nodes i and j in the stamp y u uᵀ; the entries of u add up to zero. */
  private static Phasor mutual(TransformerCore core, Changed changed, Draw draw, int i, int j) {
    double[] u = core.turns(changed.ratio(core, draw));
    return core.admittance(changed.ohms(core, draw)).times(-u[i] * u[j]);
  }

  private BranchAdmittance row(int a, int b, Function<Draw, Phasor> siemens) {
    ComplexRows row = parameters.rows(List.of(siemens));
    return new BranchAdmittance(a, b, row.re[0], row.im[0]);
  }
}
