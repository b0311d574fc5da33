package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Builds {@link Factored} networks of one wired system: any configuration, any case, every sample. */
final class Blueprint {

  private static final double JUMPER_OHMS = 0.02;

  private final Wiring wiring;
  private final Sampled sampled;
  private final Current current;
  private final Mesh mesh;
  private final Pool pool;
  private final Map<List<Object>, List<Update>> cores = new HashMap<>();
  private final Map<List<List<Integer>>, Mesh> meshWithExtras = new HashMap<>();
  private final Rows jumper;
  private final Rows scratch;

  Blueprint(Wiring wiring, Sampled sampled, Current current) {
    this.wiring = wiring;
    this.sampled = sampled;
    this.current = current;
    this.pool = new Pool(sampled.size());
    this.mesh = Mesh.of(wiring.nodeCount(), edges());
    this.scratch = nodeRows();
    this.jumper = sampled.rows(List.of(draw -> Phasor.of(1 / JUMPER_OHMS)));
  }

  Wiring wiring() {
    return wiring;
  }

  Rows nodeRows() {
    return pool.take(wiring.nodeCount());
  }

  Pool pool() {
    return pool;
  }

  /** Rows of zeros for {@link Factored#seenFrom}, shared. */
  Rows scratch() {
    return scratch;
  }

  Admittances admittances() {
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

  private Mesh meshFor(Altered altered) {
    List<List<Integer>> extras = altered.extraPairs();
    return extras.isEmpty() ? mesh : meshWithExtras.computeIfAbsent(extras, pairs -> {
      var edges = edges();
      pairs.forEach(pair -> edges.add(new int[] {pair.get(0), pair.get(1)}));
      return Mesh.of(wiring.nodeCount(), edges);
    });
  }

  /** What hangs together in a configuration with a case's changes. */
  NodeGroups groups(byte[] modes, Arrangement arrangement, Altered altered) {
    var groups = new NodeGroups(wiring.nodeCount());
    for (int i = 0; i < modes.length; i++) {
      Link link = wiring.links().get(i);
      boolean carries = modes[i] > 0 && !altered.opens(i) && !(current == Current.DIRECT && sampled.direct.re[i][0] == 0);
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
  Factored factor(byte[] modes, Arrangement arrangement, Altered altered, NodeGroups groups) {
    var factored = new Factored(meshFor(altered), pool);
    for (int i = 0; i < modes.length; i++) {
      if (modes[i] > 0 && !altered.opens(i)) {
        factored.add(altered.effective(i, admittances().of(modes[i])));
      }
      if (arrangement.jumpered(i)) {
        Link link = wiring.links().get(i);
        factored.add(new Update(link.a(), link.b(), jumper.re[0], jumper.im[0]));
      }
    }
    altered.extras(arrangement).forEach(factored::add);
    for (int i = 0; i < wiring.couplers().size(); i++) {
      Coupler coupler = wiring.couplers().get(i);
      Change.Core core = altered.core(i);
      cores.computeIfAbsent(Arrays.asList(coupler, core), key -> coupler(coupler, core)).forEach(factored::add);
    }
    for (int node : groups.floating()) {
      factored.tie(node);
    }
    factored.factor();
    return factored;
  }

  private List<Update> coupler(Coupler coupler, Change.Core core) {
    if (current == Current.DIRECT) {
      // a direct current sees two windings and no transformer
      return List.of(row(coupler.pa(), coupler.pb(), draw -> Phasor.of(coupler.directPrimary())),
          row(coupler.sa(), coupler.sb(), draw -> Phasor.of(1 / ohms(coupler, core, draw))));
    }
    int[] nodes = coupler.nodes();
    var mesh = new ArrayList<Update>();
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
  private static Phasor mutual(Coupler coupler, Change.Core core, Draw draw, int i, int j) {
    double ratio = coupler.ratio().applyAsDouble(draw) * (core == null ? 1 : core.timesRatio());
    double[] u = coupler.turns(ratio);
    return Coupler.admittance(ohms(coupler, core, draw)).times(-u[i] * u[j]);
  }

  private static double ohms(Coupler coupler, Change.Core core, Draw draw) {
    return coupler.ohms().applyAsDouble(draw) * (core == null ? 1 : core.timesOhms());
  }

  private Update row(int a, int b, java.util.function.Function<Draw, Phasor> siemens) {
    Rows row = sampled.rows(List.of(siemens));
    return new Update(a, b, row.re[0], row.im[0]);
  }
}
