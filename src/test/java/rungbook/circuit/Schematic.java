package rungbook.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.SourceBranch;
import rungbook.circuit.network.Tolerance;
import rungbook.circuit.network.TransformerCore;
import rungbook.circuit.solver.FactorizedNetwork;
import rungbook.circuit.solver.TechnicianOverrides;

/**
 * One configuration of a wired system on one sample as a plain {@link Netlist}: for the general {@link Solver} and for
 * other programs. It is written from the links anew and shares no arithmetic with {@link FactorizedNetwork}.
 */
final class Schematic {

  private static final double JUMPER_OHMS = 0.02;

  private final CircuitNetwork wiring;
  private final FaultCase fault;
  private final Draw draw;
  private final byte[] modes;
  private final TechnicianOverrides arrangement;
  private final List<Element> elements = new ArrayList<>();
  private final Map<Integer, SourceBranch> driveOfLink;

  private Schematic(CircuitNetwork wiring, FaultCase fault, Draw draw, byte[] modes, TechnicianOverrides arrangement) {
    this.wiring = wiring;
    this.fault = fault;
    this.draw = draw;
    this.modes = modes;
    this.arrangement = arrangement;
    this.driveOfLink = wiring.drives().stream().collect(Collectors.toMap(SourceBranch::link, drive -> drive));
  }

  static Netlist of(CircuitNetwork wiring, FaultCase fault, Draw draw, byte[] modes, TechnicianOverrides arrangement) {
    var schematic = new Schematic(wiring, fault, draw, modes, arrangement);
    for (int i = 0; i < modes.length; i++) {
      schematic.addLink(i);
      if (arrangement.jumpered(i)) {
        Branch link = wiring.links().get(i);
        schematic.add("jumper" + i, node(link.a()), node(link.b()), Phasor.of(JUMPER_OHMS));
      }
    }
    fault.changes().forEach(schematic::addExtra);
    for (int i = 0; i < wiring.couplers().size(); i++) {
      schematic.addCoupler(i);
    }
    return new Netlist(wiring.hertz(), schematic.elements);
  }

  static String node(int number) {
    return String.valueOf(number);
  }

  private void add(String name, String a, String b, Phasor ohms) {
    if (!a.equals(b)) {
      elements.add(Element.impedance(name, a, b, ohms, wiring.hertz()));
    }
  }

  private void addLink(int i) {
    if (modes[i] == 0 || fault.changes().contains(new NetworkChange.Open(i))) {
      return;
    }
    Branch link = wiring.links().get(i);
    Phasor ohms = (modes[i] == 2 ? link.on() : link.rest()).apply(draw).inverse();
    for (NetworkChange change : fault.changes()) {
      ohms = change instanceof NetworkChange.Raise raise && raise.link() == i ? ohms.plus(Phasor.of(raise.ohms()))
          : ohms;
    }
    SourceBranch drive = driveOfLink.get(i);
    if (drive == null) {
      add("link" + i, node(link.a()), node(link.b()), ohms);
    } else {
      elements.add(Element.voltage("source" + i, "s" + i, node(link.b()), Phasor.of(volts(drive))));
      add("link" + i, node(link.a()), "s" + i, ohms);
    }
  }

  private double volts(SourceBranch drive) {
    var other = fault.supplies().get(drive.part());
    return other == null ? drive.volts().applyAsDouble(draw) : other.at(draw.at(Tolerance.SUPPLY, drive.part()));
  }

  private void addExtra(NetworkChange change) {
    String name = "extra" + elements.size();
    if (change instanceof NetworkChange.Join join) {
      add(name, node(join.a()), node(join.b()), join.siemens().apply(draw).inverse());
    } else if (change instanceof NetworkChange.Bridge bridge && !arrangement.lifted(bridge.link())) {
      add(name, node(bridge.a()), node(bridge.b()), Phasor.of(bridge.ohms()));
    }
  }

  private void addCoupler(int i) {
    TransformerCore core = wiring.couplers().get(i);
    double ratio = core.ratio().applyAsDouble(draw);
    double ohms = core.ohms().applyAsDouble(draw);
    for (NetworkChange change : fault.changes()) {
      if (change instanceof NetworkChange.Core other && other.coupler() == i) {
        ratio *= other.timesRatio();
        ohms *= other.timesOhms();
      }
    }
    elements
        .add(new Element.Transformer("core" + i, node(core.pa()), node(core.pb()), "t" + i, node(core.sb()), ratio));
    add("leakage" + i, "t" + i, node(core.sa()), TransformerCore.admittance(ohms).inverse());
  }
}
