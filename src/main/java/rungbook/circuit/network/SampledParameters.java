package rungbook.circuit.network;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungbook.system.Interval;
import rungbook.system.Part;

/** Every quantity of a wired system for every sample. */
public final class SampledParameters {

  private final CircuitNetwork wiring;
  private final List<Draw> draws;
  final ComplexRows rest;
  public final ComplexRows on;
  public final ComplexRows direct;
  public final ComplexRows currents;
  public final double[][] onVolts;
  public final double[][] offVolts;

  public SampledParameters(CircuitNetwork wiring, Samples samples) {
    this.wiring = wiring;
    this.draws = samples.draws();
    var links = wiring.links();
    rest = rows(links.stream().map(Branch::rest).toList());
    on = rows(links.stream().map(Branch::on).toList());
    direct = rows(links.stream().map(Branch::direct).toList());
    currents = rows(wiring.drives().stream().map(this::current).toList());
    var loads = wiring.system().parts(Part.Load.class).toList();
    onVolts = loads.stream().map(load -> values(pickUp(load, load.onVolts()))).toArray(double[][]::new);
    offVolts = loads.stream().map(load -> values(pickUp(load, load.offVolts()))).toArray(double[][]::new);
  }

  public int size() {
    return draws.size();
  }

  public ComplexRows rows(List<Function<Draw, Phasor>> quantities) {
    var rows = new ComplexRows(quantities.size(), draws.size());
    for (int i = 0; i < quantities.size(); i++) {
      for (int s = 0; s < draws.size(); s++) {
        rows.set(i, s, quantities.get(i).apply(draws.get(s)));
      }
    }
    return rows;
  }

  private double[] values(ToDoubleFunction<Draw> quantity) {
    return draws.stream().mapToDouble(quantity).toArray();
  }

  private static ToDoubleFunction<Draw> pickUp(Part.Load load, Interval volts) {
    return draw -> volts.at(draw.at(Tolerance.PICK_UP, load.key()));
  }

  /** What a supply's leg drives into a short, amps: the Norton equivalent of its volts behind its inner resistance. */
  private Function<Draw, Phasor> current(SourceBranch drive) {
    var siemens = wiring.links().get(drive.link()).on();
    return draw -> siemens.apply(draw).times(drive.volts().applyAsDouble(draw));
  }

  /** The same with a fault; {@link #currents} itself where the fault leaves the supplies alone. */
  public ComplexRows currents(FaultCase fault) {
    boolean unaltered = fault.supplies().isEmpty()
        && wiring.drives().stream().noneMatch(drive -> fault.alters(drive.link()));
    return unaltered ? currents : rows(wiring.drives().stream().map(drive -> current(drive, fault)).toList());
  }

  /** An open leg drives nothing, and ohms in series with it count as its own: V / (R + raise). */
  private Function<Draw, Phasor> current(SourceBranch drive, FaultCase fault) {
    if (fault.opens(drive.link())) {
      return draw -> Phasor.ZERO;
    }
    Interval volts = fault.supplies().get(drive.part());
    var current = current(volts == null ? drive
        : new SourceBranch(drive.link(), drive.part(), draw -> volts.at(draw.at(Tolerance.SUPPLY, drive.part()))));
    var siemens = wiring.links().get(drive.link()).on();
    double raised = fault.raisedOhms(drive.link());
    return draw -> current.apply(draw).over(siemens.apply(draw).times(raised).plus(Phasor.ONE));
  }

  /** The admittances of a link as it stands, for alternating current. */
  public ComplexRows alternating(byte mode) {
    return mode == 2 ? on : rest;
  }
}
