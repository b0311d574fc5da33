package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

/** Builds {@link FactorizedNetwork} networks of one wired system: any configuration, any case, every sample. */
public final class NetworkFactory {

  private static final double JUMPER_OHMS = 0.02;

  private final CircuitNetwork wiring;
  private final SampledParameters sampled;
  private final Current current;
  private final EliminationOrder mesh;
  private final RowPool pool;
  private final Map<List<Object>, List<RankOneUpdate>> cores = new HashMap<>();
  private final Map<List<List<Integer>>, EliminationOrder> meshWithExtras = new HashMap<>();
  private final ComplexRows jumper;
  private final ComplexRows scratch;

  public NetworkFactory(CircuitNetwork wiring, SampledParameters sampled, Current current) {
    this.wiring = wiring;
    this.sampled = sampled;
    this.current = current;
    this.pool = new RowPool(sampled.size());
    this.mesh = EliminationOrder.of(wiring.nodeCount(), edges());
    this.scratch = nodeRows();
    this.jumper = sampled.rows(List.of(draw -> Phasor.of(1 / JUMPER_OHMS)));
  }

  CircuitNetwork wiring() {
    return wiring;
  }

  public ComplexRows nodeRows() {
    return pool.take(wiring.nodeCount());
  }

  public RowPool pool() {
    return pool;
  }

  /** Rows of zeros for {@link FactorizedNetwork#seenFrom}, shared. */
  ComplexRows scratch() {
    return scratch;
  }

  public Admittances admittances() {
    return current == Current.DIRECT ? mode -> sampled.direct : sampled::alternating;
  }

  private List<int[]> edges() {
    var edges = new ArrayList<int[]>();
    wiring.links().forEach(link -> edges.add(new int[] {link.a(), link.b()}));
    wiring.couplers().forEach(coupler -> addPairs(coupler.nodes(), edges));
    return edges;
  }

  private static void addPairs(int[] nodes, List<int[]> edges) {
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        edges.add(new int[] {nodes[i], nodes[j]});
      }
    }
  }

  private EliminationOrder meshFor(FaultedParameters altered) {
    List<List<Integer>> extras = altered.extraPairs();
    return extras.isEmpty() ? mesh : meshWithExtras.computeIfAbsent(extras, pairs -> {
      var edges = edges();
      pairs.forEach(pair -> edges.add(new int[] {pair.get(0), pair.get(1)}));
      return EliminationOrder.of(wiring.nodeCount(), edges);
    });
  }

  /** What hangs together in a configuration with a case's changes. */
  ConnectedComponents groups(byte[] modes, TechnicianOverrides arrangement, FaultedParameters altered) {
    var groups = new ConnectedComponents(wiring.nodeCount());
    for (int i = 0; i < modes.length; i++) {
      Branch link = wiring.links().get(i);
      boolean carries = modes[i] > 0 && !altered.opens(i)
          && !(current == Current.DIRECT && sampled.direct.re[i][0] == 0);
      if (carries || arrangement.jumpered(i)) {
        groups.join(link.a(), link.b());
      }
    }
    wiring.couplers().forEach(c -> {
      groups.join(c.pa(), c.pb());
      groups.join(c.sa(), c.sb());
    });
    altered.extras(arrangement).forEach(extra -> groups.join(extra.a(), extra.b()));
    return groups;
  }

  /** The network of a configuration with a case's changes built in, eliminated. */
  FactorizedNetwork factor(byte[] modes, TechnicianOverrides arrangement, FaultedParameters altered,
      ConnectedComponents groups) {
    var factored = new FactorizedNetwork(meshFor(altered), pool);
    for (int i = 0; i < modes.length; i++) {
      if (modes[i] > 0 && !altered.opens(i)) {
        factored.add(altered.effective(i, admittances().of(modes[i])));
      }
      if (arrangement.jumpered(i)) {
        Branch link = wiring.links().get(i);
        factored.add(new RankOneUpdate(link.a(), link.b(), jumper.re[0], jumper.im[0]));
      }
    }
    altered.extras(arrangement).forEach(factored::add);
    for (int i = 0; i < wiring.couplers().size(); i++) {
      TransformerCore coupler = wiring.couplers().get(i);
      NetworkChange.Core core = altered.core(i);
      cores.computeIfAbsent(Arrays.asList(coupler, core), key -> coupler(coupler, core)).forEach(factored::add);
    }
    for (int node : groups.floating()) {
      factored.tie(node);
    }
    factored.factor();
    return factored;
  }

  private List<RankOneUpdate> coupler(TransformerCore coupler, NetworkChange.Core core) {
    if (current == Current.DIRECT) {
      // a direct current sees two windings and no transformer
      return List.of(row(coupler.pa(), coupler.pb(), draw -> Phasor.of(coupler.directPrimary())),
          row(coupler.sa(), coupler.sb(), draw -> Phasor.of(1 / ohms(coupler, core, draw))));
    }
    int[] nodes = coupler.nodes();
    var mesh = new ArrayList<RankOneUpdate>();
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        int p = i;
        int q = j;
        mesh.add(row(nodes[i], nodes[j], draw -> mutual(coupler, core, draw, p, q)));
      }
    }
    return mesh;
  }

  /** The mesh that stands for y u uᵀ: −y u_i u_j between nodes i and j, since the terms of u add up to nothing. */
  private static Phasor mutual(TransformerCore coupler, NetworkChange.Core core, Draw draw, int i, int j) {
    double ratio = coupler.ratio().applyAsDouble(draw) * (core == null ? 1 : core.timesRatio());
    double[] u = coupler.turns(ratio);
    return TransformerCore.admittance(ohms(coupler, core, draw)).times(-u[i] * u[j]);
  }

  private static double ohms(TransformerCore coupler, NetworkChange.Core core, Draw draw) {
    return coupler.ohms().applyAsDouble(draw) * (core == null ? 1 : core.timesOhms());
  }

  private RankOneUpdate row(int a, int b, java.util.function.Function<Draw, Phasor> siemens) {
    ComplexRows row = sampled.rows(List.of(siemens));
    return new RankOneUpdate(a, b, row.re[0], row.im[0]);
  }
}
