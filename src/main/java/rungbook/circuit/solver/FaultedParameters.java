package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.NetworkChange.Bridge;
import rungbook.circuit.network.NetworkChange.Core;
import rungbook.circuit.network.NetworkChange.Derate;
import rungbook.circuit.network.NetworkChange.Join;
import rungbook.circuit.network.NetworkChange.Open;
import rungbook.circuit.network.NetworkChange.Overload;
import rungbook.circuit.network.NetworkChange.Raise;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.SampledParameters;

/** The network changes of one case, evaluated for every sample of a block. */
public final class FaultedParameters {

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final FaultCase fault;
  private final ComplexRows currents;
  private final ComplexRows returnCurrents;
  private final BitSet opened = new BitSet();
  private final Map<Integer, double[]> raised = new HashMap<>();
  private final Map<Integer, double[]> derated = new HashMap<>();
  private final Map<Integer, double[]> overloaded = new HashMap<>();
  private final List<Extra> extras = new ArrayList<>();
  private final Map<Integer, List<Core>> cores = new HashMap<>();
  private final Map<ComplexRows, Map<Integer, BranchAdmittance>> effective = new HashMap<>();

  /**
   * An admittance that the fault adds.
   *
   * @param branch the branch with which it comes off; −1 if with none
   */
  public record Extra(int branch, BranchAdmittance siemens) {}

  public FaultedParameters(CircuitNetwork network, SampledParameters parameters, FaultCase fault) {
    this.network = network;
    this.parameters = parameters;
    this.fault = fault;
    currents = parameters.currents(fault);
    returnCurrents = new ComplexRows(currents.re.length, parameters.size());
    for (int i = 0; i < currents.re.length; i++) {
      ComplexKernels.subtract(returnCurrents.re[i], returnCurrents.im[i], currents.re[i], currents.im[i]);
    }
    fault.changes().forEach(this::take);
  }

  private void take(NetworkChange change) {
    if (change instanceof Open open) {
      opened.set(open.branch());
    } else if (change instanceof Raise raise) {
      raised.merge(raise.branch(), parameters.values(raise.ohms()::at), FaultedParameters::sum);
    } else if (change instanceof Derate derate) {
      derated.put(derate.branch(), parameters.values(derate.share()::at));
    } else if (change instanceof Overload overload) {
      overloaded.put(overload.branch(), parameters.values(overload.times()::at));
    } else if (change instanceof Bridge bridge) {
      ComplexRows row = parameters.rows(List.of(draw -> Phasor.of(1 / bridge.ohms().at(draw))));
      extras.add(new Extra(bridge.branch(), new BranchAdmittance(bridge.a(), bridge.b(), row.re[0], row.im[0])));
    } else if (change instanceof Join join) {
      ComplexRows row = parameters.rows(List.of(join.siemens()));
      extras.add(new Extra(-1, new BranchAdmittance(join.a(), join.b(), row.re[0], row.im[0])));
    } else if (change instanceof Core core) {
      cores.computeIfAbsent(core.index(), index -> new ArrayList<>()).add(core);
    }
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = new double[one.length];
    Arrays.setAll(sum, s -> one[s] + other[s]);
    return sum;
  }

  public FaultCase fault() {
    return fault;
  }

  public boolean opens(int branch) {
    return opened.get(branch);
  }

  /** Norton currents of the sources, [source][sample]; the same object as the healthy ones if they do not change. */
  public ComplexRows currents() {
    return currents;
  }

  /** The same with the opposite sign: what each source draws from its other node. */
  ComplexRows returnCurrents() {
    return returnCurrents;
  }

  /** What changes each transformer core; empty for one that is as it was built. */
  public List<Core> changes(int core) {
    return cores.getOrDefault(core, List.of());
  }

  /** The changed transformer cores, by index. */
  public Set<Integer> cores() {
    return cores.keySet();
  }

  /** The admittances of bridges and joins. */
  public List<Extra> extras() {
    return extras;
  }

  /** The branches whose admittance the fault changes. */
  public BitSet touched() {
    var touched = (BitSet) opened.clone();
    Stream.of(raised, derated, overloaded).flatMap(changed -> changed.keySet().stream()).forEach(touched::set);
    return touched;
  }

  /**
   * A branch's admittance y with a fault that weakens or overloads it, or y / (1 + y R) with R the ohms that the fault
   * adds in series.
   */
  public BranchAdmittance effective(int branch, ComplexRows own) {
    return isVaried(branch)
        ? effective.computeIfAbsent(own, rows -> new HashMap<>()).computeIfAbsent(branch, at -> varied(at, own))
        : between(branch, own.re[branch], own.im[branch]);
  }

  private boolean isVaried(int branch) {
    return raised.containsKey(branch) || derated.containsKey(branch) || overloaded.containsKey(branch);
  }

  private BranchAdmittance between(int branch, double[] re, double[] im) {
    Branch nodes = network.branches().get(branch);
    return new BranchAdmittance(nodes.a(), nodes.b(), re, im);
  }

  private BranchAdmittance varied(int branch, ComplexRows own) {
    double[] ohms = raised.getOrDefault(branch, new double[parameters.size()]);
    var row = new ComplexRows(1, parameters.size());
    for (int s = 0; s < parameters.size(); s++) {
      Phasor y = siemens(branch, own, s);
      row.set(0, s, y.over(y.times(ohms[s]).plus(Phasor.ONE)));
    }
    return between(branch, row.re[0], row.im[0]);
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
    double[] ohms = raised.get(branch);
    if (ohms != null) {
      for (int s = 0; s < share.length; s++) {
        share[s] = 1 / siemens(branch, own, s).times(ohms[s]).plus(Phasor.ONE).magnitude();
      }
    }
    return share;
  }

  /** Whether the fault changes a branch's admittance. */
  public boolean touches(int branch) {
    return opens(branch) || isVaried(branch);
  }
}
