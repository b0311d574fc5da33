package rungbook.circuit.network;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungbook.system.Interval;
import rungbook.system.Part;

/** Every quantity of a network for every sample: rows of [branch][sample] and [source][sample]. */
public final class SampledParameters {

  private final CircuitNetwork network;
  private final List<Draw> draws;
  /** Admittance before pull-in, [branch][sample], siemens. */
  final ComplexRows released;

  /** Admittance when pulled in or closed, [branch][sample], siemens. */
  public final ComplexRows on;

  /** Admittance for direct current, [branch][sample], siemens. */
  public final ComplexRows direct;

  /** Norton current of each source, [source][sample], amps. */
  public final ComplexRows currents;

  /** Pick-up voltage of the healthy system, [load][sample]. */
  private final double[][] onVolts;

  /** Drop-out voltage, [load][sample]. */
  public final double[][] offVolts;

  public SampledParameters(CircuitNetwork network, Samples samples) {
    this.network = network;
    this.draws = samples.draws();
    var branches = network.branches();
    released = rows(branches.stream().map(Branch::released).toList());
    on = rows(branches.stream().map(Branch::on).toList());
    direct = rows(branches.stream().map(Branch::direct).toList());
    currents = rows(network.sources().stream().map(this::current).toList());
    var loads = network.system().parts(Part.Load.class).toList();
    onVolts = loads.stream().map(load -> values(pickUp(load, load.onVolts()))).toArray(double[][]::new);
    offVolts = loads.stream().map(load -> values(pickUp(load, load.offVolts()))).toArray(double[][]::new);
  }

  /** The number of samples. */
  public int size() {
    return draws.size();
  }

  /** Evaluates quantities for every sample: [quantity][sample]. */
  public ComplexRows rows(List<Function<Draw, Phasor>> quantities) {
    var rows = new ComplexRows(quantities.size(), draws.size());
    for (int i = 0; i < quantities.size(); i++) {
      for (int s = 0; s < draws.size(); s++) {
        rows.set(i, s, quantities.get(i).apply(draws.get(s)));
      }
    }
    return rows;
  }

  /** Evaluates a quantity for every sample. */
  public double[] values(ToDoubleFunction<Draw> quantity) {
    return draws.stream().mapToDouble(quantity).toArray();
  }

  private static ToDoubleFunction<Draw> pickUp(Part.Load load, Interval volts) {
    return draw -> volts.at(draw.at(Tolerance.PICK_UP, load.key()));
  }

  /** Pick-up voltage of a load, by its number and key, with a fault: [sample]. */
  public double[] onVolts(int load, String key, FaultCase fault) {
    Spread stiff = fault.pickUps().get(key);
    return stiff == null ? onVolts[load] : values(stiff::at);
  }

  /** Norton current of a source: its volts times the admittance of its internal resistance, amps. */
  private Function<Draw, Phasor> current(SourceBranch source) {
    var siemens = network.branches().get(source.branch()).on();
    return draw -> siemens.apply(draw).times(source.volts().applyAsDouble(draw));
  }

  /** Norton currents with a fault; the same object as {@link #currents} if the fault does not change the sources. */
  public ComplexRows currents(FaultCase fault) {
    boolean unchanged = fault.supplies().isEmpty()
        && network.sources().stream().noneMatch(source -> fault.alters(source.branch()));
    return unchanged ? currents : rows(network.sources().stream().map(source -> current(source, fault)).toList());
  }

  /** Norton current with a fault: zero if the branch is open, V / (R + raised ohms) otherwise. */
  private Function<Draw, Phasor> current(SourceBranch source, FaultCase fault) {
    if (fault.opens(source.branch())) {
      return draw -> Phasor.ZERO;
    }
    Interval volts = fault.supplies().get(source.part());
    var current = current(volts == null ? source
        : new SourceBranch(source.branch(), source.part(), draw -> volts.at(draw.at(Tolerance.SUPPLY, source.part()))));
    var siemens = network.branches().get(source.branch()).on();
    return draw -> current.apply(draw)
        .over(siemens.apply(draw).times(fault.raisedOhms(source.branch(), draw)).plus(Phasor.ONE));
  }

  /** The admittance rows for alternating current of a branch in this mode. */
  public ComplexRows alternating(byte mode) {
    return mode == 2 ? on : released;
  }
}
