package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange.Bridge;
import rungbook.circuit.network.NetworkChange.Core;
import rungbook.circuit.network.NetworkChange.Join;
import rungbook.circuit.network.NetworkChange.Open;
import rungbook.circuit.network.NetworkChange.Raise;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.network.SampledParameters;

/** A case's changes with their numbers, for every sample. */
public final class FaultedParameters {

  private final CircuitNetwork wiring;
  private final SampledParameters sampled;
  private final boolean[] opened;
  private boolean opens;
  private final Map<Integer, Double> raised = new HashMap<>();
  private final List<Bridge> bridges = new ArrayList<>();
  private final List<Join> joins = new ArrayList<>();
  private final Map<Integer, Core> cores = new HashMap<>();

  public FaultedParameters(CircuitNetwork wiring, SampledParameters sampled, FaultCase fault) {
    this.wiring = wiring;
    this.sampled = sampled;
    this.opened = new boolean[wiring.links().size()];
    for (NetworkChange change : fault.changes()) {
      if (change instanceof Open open) {
        opened[open.link()] = true;
        opens = true;
      } else if (change instanceof Raise raise) {
        raised.merge(raise.link(), raise.ohms(), Double::sum);
      } else if (change instanceof Bridge bridge) {
        bridges.add(bridge);
      } else if (change instanceof Join join) {
        joins.add(join);
      } else if (change instanceof Core core) {
        cores.put(core.coupler(), core);
      }
    }
  }

  public boolean opens(int link) {
    return opened[link];
  }

  Core core(int coupler) {
    return cores.get(coupler);
  }

  /** Every change is one between two nodes, and so of rank one. */
  public boolean isLowRank() {
    return cores.isEmpty();
  }

  /** Changes nothing that is solved for, whatever it does to the contacts. */
  public boolean isEmpty() {
    return !opens && raised.isEmpty() && bridges.isEmpty() && joins.isEmpty() && cores.isEmpty();
  }

  /** The link's admittance: its own row of {@code own}, or what is left of it behind a bad connection. */
  public RankOneUpdate effective(int link, ComplexRows own) {
    Branch between = wiring.links().get(link);
    Double ohms = raised.get(link);
    if (ohms == null) {
      return new RankOneUpdate(between.a(), between.b(), own.re[link], own.im[link]);
    }
    var row = new ComplexRows(1, sampled.size());
    for (int s = 0; s < sampled.size(); s++) {
      Phasor y = new Phasor(own.re[link][s], own.im[link][s]);
      row.set(0, s, y.over(y.times(ohms).plus(Phasor.ONE)));
    }
    return new RankOneUpdate(between.a(), between.b(), row.re[0], row.im[0]);
  }

  /** How much of its current a load's link still gets for the voltage across it. */
  public double[] share(int link, ComplexRows own) {
    double[] share = new double[sampled.size()];
    java.util.Arrays.fill(share, opens(link) ? 0 : 1);
    if (raised.containsKey(link)) {
      for (int s = 0; s < share.length; s++) {
        Phasor y = new Phasor(own.re[link][s], own.im[link][s]);
        share[s] = 1 / y.times(raised.get(link)).plus(Phasor.ONE).magnitude();
      }
    }
    return share;
  }

  public boolean touches(int link) {
    return opened[link] || raised.containsKey(link);
  }

  /** The pairs of nodes that are joined beside the links. */
  List<List<Integer>> extraPairs() {
    return Stream
        .concat(bridges.stream().map(b -> List.of(b.a(), b.b())), joins.stream().map(j -> List.of(j.a(), j.b())))
        .toList();
  }

  /**
   * Bridges and joins. A bridge inside a contact is there while the contact is open; it goes with a part that is taken
   * off.
   */
  List<RankOneUpdate> extras(TechnicianOverrides arrangement) {
    var extras = new ArrayList<RankOneUpdate>();
    for (Bridge bridge : bridges) {
      if (!arrangement.lifted(bridge.link())) {
        extras.add(constant(bridge.a(), bridge.b(), Phasor.of(1 / bridge.ohms())));
      }
    }
    for (Join join : joins) {
      ComplexRows row = sampled.rows(List.of(join.siemens()));
      extras.add(new RankOneUpdate(join.a(), join.b(), row.re[0], row.im[0]));
    }
    return extras;
  }

  private RankOneUpdate constant(int a, int b, Phasor siemens) {
    ComplexRows row = sampled.rows(List.of(draw -> siemens));
    return new RankOneUpdate(a, b, row.re[0], row.im[0]);
  }

  /** What has to be added to the unaltered network of a configuration. */
  public List<RankOneUpdate> updates(byte[] modes, TechnicianOverrides arrangement, Admittances own) {
    var updates = new ArrayList<RankOneUpdate>();
    for (int link = 0; link < modes.length; link++) {
      if (modes[link] > 0 && touches(link)) {
        updates.add(difference(link, own.of(modes[link])));
      }
    }
    updates.addAll(extras(arrangement));
    return updates;
  }

  private RankOneUpdate difference(int link, ComplexRows own) {
    Branch between = wiring.links().get(link);
    var row = new ComplexRows(1, sampled.size());
    if (!opens(link)) {
      RankOneUpdate left = effective(link, own);
      ComplexKernels.add(row.re[0], row.im[0], left.re(), left.im());
    }
    ComplexKernels.subtract(row.re[0], row.im[0], own.re[link], own.im[link]);
    return new RankOneUpdate(between.a(), between.b(), row.re[0], row.im[0]);
  }
}
