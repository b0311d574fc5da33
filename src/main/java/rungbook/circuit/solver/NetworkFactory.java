package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.network.RowPool;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.TransformerCore;

/** Builds factorized networks of one system, for any relay state and fault case, for every sample. */
public final class NetworkFactory {

  /** Resistance of a jumper with its two clips (common practice, no source). */
  private static final double JUMPER_OHMS = 0.02;

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final Current current;
  private final EliminationOrder order;
  private final RowPool pool;
  private final Map<List<Object>, List<RankOneUpdate>> coreUpdates = new HashMap<>();
  private final Map<List<List<Integer>>, EliminationOrder> ordersWithExtras = new HashMap<>();
  private final ComplexRows jumper;
  private final ComplexRows scratch;

  public NetworkFactory(CircuitNetwork network, SampledParameters parameters, Current current) {
    this.network = network;
    this.parameters = parameters;
    this.current = current;
    this.pool = new RowPool(parameters.size());
    this.order = EliminationOrder.of(network.nodeCount(), edges());
    this.scratch = nodeRows();
    this.jumper = parameters.rows(List.of(draw -> Phasor.of(1 / JUMPER_OHMS)));
  }

  CircuitNetwork network() {
    return network;
  }

  /** Rows of zeros, [node][sample]. */
  public ComplexRows nodeRows() {
    return pool.take(network.nodeCount());
  }

  public RowPool pool() {
    return pool;
  }

  /** Shared rows of zeros for {@link FactorizedNetwork#impedanceBetween}, [node][sample]. */
  ComplexRows scratch() {
    return scratch;
  }

  public Admittances admittances() {
    return current == Current.DIRECT ? mode -> parameters.direct : parameters::alternating;
  }

  private List<int[]> edges() {
    var edges = new ArrayList<int[]>();
    network.branches().forEach(branch -> edges.add(new int[] {branch.a(), branch.b()}));
    network.cores().forEach(core -> addPairs(core.nodes(), edges));
    return edges;
  }

  private static void addPairs(int[] nodes, List<int[]> edges) {
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        edges.add(new int[] {nodes[i], nodes[j]});
      }
    }
  }

  private EliminationOrder orderFor(FaultedParameters faulted) {
    List<List<Integer>> extras = faulted.extraPairs();
    return extras.isEmpty() ? order : ordersWithExtras.computeIfAbsent(extras, pairs -> {
      var edges = edges();
      pairs.forEach(pair -> edges.add(new int[] {pair.get(0), pair.get(1)}));
      return EliminationOrder.of(network.nodeCount(), edges);
    });
  }

  /** The connected components in these modes with a case's changes. */
  ConnectedComponents components(byte[] modes, TechnicianOverrides overrides, FaultedParameters faulted) {
    var components = new ConnectedComponents(network.nodeCount());
    for (int i = 0; i < modes.length; i++) {
      Branch branch = network.branches().get(i);
      boolean carries = modes[i] > 0 && !faulted.opens(i)
          && !(current == Current.DIRECT && parameters.direct.re[i][0] == 0);
      if (carries || overrides.jumpered(i)) {
        components.join(branch.a(), branch.b());
      }
    }
    network.cores().forEach(c -> {
      components.join(c.pa(), c.pb());
      components.join(c.sa(), c.sb());
    });
    faulted.extras(overrides).forEach(extra -> components.join(extra.a(), extra.b()));
    return components;
  }

  /** The network in these modes with a case's changes, factorized. */
  FactorizedNetwork factor(byte[] modes, TechnicianOverrides overrides, FaultedParameters faulted,
      ConnectedComponents components) {
    var factorized = new FactorizedNetwork(orderFor(faulted), pool);
    for (int i = 0; i < modes.length; i++) {
      if (modes[i] > 0 && !faulted.opens(i)) {
        factorized.add(faulted.effective(i, admittances().of(modes[i])));
      }
      if (overrides.jumpered(i)) {
        Branch branch = network.branches().get(i);
        factorized.add(new RankOneUpdate(branch.a(), branch.b(), jumper.re[0], jumper.im[0]));
      }
    }
    faulted.extras(overrides).forEach(factorized::add);
    for (int i = 0; i < network.cores().size(); i++) {
      TransformerCore core = network.cores().get(i);
      NetworkChange.Core change = faulted.coreChange(i);
      coreUpdates.computeIfAbsent(List.of(core, change), key -> updates(core, change)).forEach(factorized::add);
    }
    for (int node : components.floating()) {
      factorized.tieToGround(node);
    }
    factorized.factor();
    return factorized;
  }

  private List<RankOneUpdate> updates(TransformerCore core, NetworkChange.Core change) {
    if (current == Current.DIRECT) {
      // for direct current the windings are two separate resistances
      return List.of(row(core.pa(), core.pb(), draw -> Phasor.of(core.directPrimary())),
          row(core.sa(), core.sb(), draw -> Phasor.of(1 / ohms(core, change, draw))));
    }
    int[] nodes = core.nodes();
    var updates = new ArrayList<RankOneUpdate>();
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        int p = i;
        int q = j;
        updates.add(row(nodes[i], nodes[j], draw -> mutual(core, change, draw, p, q)));
      }
    }
    return updates;
  }

  /** −y u_i u_j, the admittance between nodes i and j in the stamp y u uᵀ; the entries of u add up to zero. */
  private static Phasor mutual(TransformerCore core, NetworkChange.Core change, Draw draw, int i, int j) {
    double ratio = core.ratio().applyAsDouble(draw) * change.timesRatio();
    double[] u = core.turns(ratio);
    return core.admittance(ohms(core, change, draw)).times(-u[i] * u[j]);
  }

  private static double ohms(TransformerCore core, NetworkChange.Core change, Draw draw) {
    return core.ohms().applyAsDouble(draw) * change.timesOhms().at(draw);
  }

  private RankOneUpdate row(int a, int b, Function<Draw, Phasor> siemens) {
    ComplexRows row = parameters.rows(List.of(siemens));
    return new RankOneUpdate(a, b, row.re[0], row.im[0]);
  }
}
