package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.Arrays;
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
import rungbook.circuit.network.NetworkChange.Derate;
import rungbook.circuit.network.NetworkChange.Join;
import rungbook.circuit.network.NetworkChange.Open;
import rungbook.circuit.network.NetworkChange.Overload;
import rungbook.circuit.network.NetworkChange.Raise;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.Spread;

/** The network changes of one case, evaluated for every sample. */
public final class FaultedParameters {

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final boolean[] opened;
  private boolean opens;
  private final Map<Integer, double[]> raised = new HashMap<>();
  private final Map<Integer, double[]> derated = new HashMap<>();
  private final Map<Integer, double[]> overloaded = new HashMap<>();
  private final List<Bridge> bridges = new ArrayList<>();
  private final List<Join> joins = new ArrayList<>();
  private final Map<Integer, Core> coreChanges = new HashMap<>();

  public FaultedParameters(CircuitNetwork network, SampledParameters parameters, FaultCase fault) {
    this.network = network;
    this.parameters = parameters;
    this.opened = new boolean[network.branches().size()];
    for (NetworkChange change : fault.changes()) {
      if (change instanceof Open open) {
        opened[open.branch()] = true;
        opens = true;
      } else if (change instanceof Raise raise) {
        raised.merge(raise.branch(), parameters.values(raise.ohms()::at), FaultedParameters::sum);
      } else if (change instanceof Derate derate) {
        derated.put(derate.branch(), parameters.values(derate.share()::at));
      } else if (change instanceof Overload overload) {
        overloaded.put(overload.branch(), parameters.values(overload.times()::at));
      } else if (change instanceof Bridge bridge) {
        bridges.add(bridge);
      } else if (change instanceof Join join) {
        joins.add(join);
      } else if (change instanceof Core core) {
        coreChanges.put(core.index(), core);
      }
    }
  }

  public boolean opens(int branch) {
    return opened[branch];
  }

  /** The change of a transformer core; factors of 1 if the fault does not change it. */
  Core coreChange(int index) {
    return coreChanges.getOrDefault(index, Core.ofRatio(index, 1));
  }

  /** Whether every change is an admittance between two nodes, and so of rank one. */
  public boolean isLowRank() {
    return coreChanges.isEmpty();
  }

  /** Whether the fault leaves all admittances alone; it may still hold contacts. */
  public boolean isEmpty() {
    return !opens && raised.isEmpty() && derated.isEmpty() && overloaded.isEmpty() && bridges.isEmpty()
        && joins.isEmpty() && coreChanges.isEmpty();
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = new double[one.length];
    Arrays.setAll(sum, s -> one[s] + other[s]);
    return sum;
  }

  /**
   * A branch's admittance y with a fault that weakens or overloads it, or y / (1 + y R) with R the ohms that the fault
   * adds in series.
   */
  public RankOneUpdate effective(int branch, ComplexRows own) {
    Branch between = network.branches().get(branch);
    if (Stream.of(raised, derated, overloaded).noneMatch(changed -> changed.containsKey(branch))) {
      return new RankOneUpdate(between.a(), between.b(), own.re[branch], own.im[branch]);
    }
    double[] ohms = raised.getOrDefault(branch, new double[parameters.size()]);
    var row = new ComplexRows(1, parameters.size());
    for (int s = 0; s < parameters.size(); s++) {
      Phasor y = siemens(branch, own, s);
      row.set(0, s, y.over(y.times(ohms[s]).plus(Phasor.ONE)));
    }
    return new RankOneUpdate(between.a(), between.b(), row.re[0], row.im[0]);
  }

  /** The admittance of the branch's own part; an overload changes it only while the part is on. */
  private Phasor siemens(int branch, ComplexRows own, int sample) {
    Phasor y = new Phasor(own.re[branch][sample], own.im[branch][sample]);
    double[] times = own == parameters.on ? overloaded.get(branch) : derated.get(branch);
    return times == null ? y : y.times(times[sample]);
  }

  /** The fraction of a branch's voltage that its load gets: 1 / |1 + y R|, 0 if the branch is open. */
  public double[] share(int branch, ComplexRows own) {
    double[] share = new double[parameters.size()];
    Arrays.fill(share, opens(branch) ? 0 : 1);
    if (raised.containsKey(branch)) {
      for (int s = 0; s < share.length; s++) {
        share[s] = 1 / siemens(branch, own, s).times(raised.get(branch)[s]).plus(Phasor.ONE).magnitude();
      }
    }
    return share;
  }

  /** Whether the fault changes a branch's admittance. */
  public boolean touches(int branch) {
    return opened[branch] || Stream.of(raised, derated, overloaded).anyMatch(of -> of.containsKey(branch));
  }

  /** The pairs of nodes that bridges and joins connect. */
  List<List<Integer>> extraPairs() {
    return Stream
        .concat(bridges.stream().map(b -> List.of(b.a(), b.b())), joins.stream().map(j -> List.of(j.a(), j.b())))
        .toList();
  }

  /**
   * The admittances of bridges and joins. A bridge inside a contact conducts while the contact is open; disconnecting
   * the part removes it.
   */
  List<RankOneUpdate> extras(TechnicianOverrides overrides) {
    var extras = new ArrayList<RankOneUpdate>();
    for (Bridge bridge : bridges) {
      if (!overrides.disconnected(bridge.branch())) {
        extras.add(bridge(bridge.a(), bridge.b(), bridge.ohms()));
      }
    }
    for (Join join : joins) {
      ComplexRows row = parameters.rows(List.of(join.siemens()));
      extras.add(new RankOneUpdate(join.a(), join.b(), row.re[0], row.im[0]));
    }
    return extras;
  }

  private RankOneUpdate bridge(int a, int b, Spread ohms) {
    ComplexRows row = parameters.rows(List.of(draw -> Phasor.of(1 / ohms.at(draw))));
    return new RankOneUpdate(a, b, row.re[0], row.im[0]);
  }

  /** The admittances to add to the healthy network in these modes. */
  public List<RankOneUpdate> updates(byte[] modes, TechnicianOverrides overrides, Admittances own) {
    var updates = new ArrayList<RankOneUpdate>();
    for (int branch = 0; branch < modes.length; branch++) {
      if (modes[branch] > 0 && touches(branch)) {
        updates.add(difference(branch, own.of(modes[branch])));
      }
    }
    updates.addAll(extras(overrides));
    return updates;
  }

  private RankOneUpdate difference(int branch, ComplexRows own) {
    Branch between = network.branches().get(branch);
    var row = new ComplexRows(1, parameters.size());
    if (!opens(branch)) {
      RankOneUpdate left = effective(branch, own);
      ComplexKernels.add(row.re[0], row.im[0], left.re(), left.im());
    }
    ComplexKernels.subtract(row.re[0], row.im[0], own.re[branch], own.im[branch]);
    return new RankOneUpdate(between.a(), between.b(), row.re[0], row.im[0]);
  }
}
