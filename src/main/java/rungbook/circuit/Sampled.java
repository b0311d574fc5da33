package rungbook.circuit;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungbook.system.Between;
import rungbook.system.Part;

/** Every quantity of a wired system for every sample. */
final class Sampled {

  private final Wiring wiring;
  private final List<Draw> draws;
  final Rows rest;
  final Rows on;
  final Rows direct;
  final Rows currents;
  final double[][] onVolts;
  final double[][] offVolts;

  Sampled(Wiring wiring, Samples samples) {
    this.wiring = wiring;
    this.draws = samples.draws();
    var links = wiring.links();
    rest = rows(links.stream().map(Link::rest).toList());
    on = rows(links.stream().map(Link::on).toList());
    direct = rows(links.stream().map(Link::direct).toList());
    currents = rows(wiring.drives().stream().map(this::current).toList());
    var loads = wiring.system().parts(Part.Load.class).toList();
    onVolts = loads.stream().map(load -> values(pickUp(load, load.onVolts()))).toArray(double[][]::new);
    offVolts = loads.stream().map(load -> values(pickUp(load, load.offVolts()))).toArray(double[][]::new);
  }

  int size() {
    return draws.size();
  }

  Rows rows(List<Function<Draw, Phasor>> quantities) {
    var rows = new Rows(quantities.size(), draws.size());
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

  private static ToDoubleFunction<Draw> pickUp(Part.Load load, Between volts) {
    return draw -> volts.at(draw.at(Tolerance.PICK_UP, load.key()));
  }

  /** What a supply's leg drives into a short, amps: the Norton equivalent of its volts behind its inner resistance. */
  private Function<Draw, Phasor> current(Drive drive) {
    var siemens = wiring.links().get(drive.link()).on();
    return draw -> siemens.apply(draw).times(drive.volts().applyAsDouble(draw));
  }

  /** The same with a fault; {@link #currents} itself where the fault leaves the supplies alone. */
  Rows currents(Case fault) {
    boolean unaltered = fault.supplies().isEmpty() && wiring.drives().stream().noneMatch(drive -> fault.alters(drive.link()));
    return unaltered ? currents : rows(wiring.drives().stream().map(drive -> current(drive, fault)).toList());
  }

  /** An open leg drives nothing, and ohms in series with it count as its own: V / (R + raise). */
  private Function<Draw, Phasor> current(Drive drive, Case fault) {
    if (fault.opens(drive.link())) {
      return draw -> Phasor.ZERO;
    }
    Between volts = fault.supplies().get(drive.part());
    var current = current(volts == null ? drive
        : new Drive(drive.link(), drive.part(), draw -> volts.at(draw.at(Tolerance.SUPPLY, drive.part()))));
    var siemens = wiring.links().get(drive.link()).on();
    double raised = fault.raisedOhms(drive.link());
    return draw -> current.apply(draw).over(siemens.apply(draw).times(raised).plus(Phasor.ONE));
  }

  /** The admittances of a link as it stands, for alternating current. */
  Rows alternating(byte mode) {
    return mode == 2 ? on : rest;
  }
}
