package rungbook.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One configuration of a wired system on one sample as a plain {@link Netlist}: for the general {@link Solver} and for
 * other programs. It is written from the links anew and shares no arithmetic with {@link Factored}.
 */
final class Schematic {

  private static final double JUMPER_OHMS = 0.02;

  private final Wiring wiring;
  private final Case fault;
  private final Draw draw;
  private final byte[] modes;
  private final Arrangement arrangement;
  private final List<Element> elements = new ArrayList<>();
  private final Map<Integer, Drive> driveOfLink;

  private Schematic(Wiring wiring, Case fault, Draw draw, byte[] modes, Arrangement arrangement) {
    this.wiring = wiring;
    this.fault = fault;
    this.draw = draw;
    this.modes = modes;
    this.arrangement = arrangement;
    this.driveOfLink = wiring.drives().stream().collect(Collectors.toMap(Drive::link, drive -> drive));
  }

  static Netlist of(Wiring wiring, Case fault, Draw draw, byte[] modes, Arrangement arrangement) {
    var schematic = new Schematic(wiring, fault, draw, modes, arrangement);
    for (int i = 0; i < modes.length; i++) {
      schematic.addLink(i);
      if (arrangement.jumpered(i)) {
        Link link = wiring.links().get(i);
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
    if (modes[i] == 0 || fault.changes().contains(new Change.Open(i))) {
      return;
    }
    Link link = wiring.links().get(i);
    Phasor ohms = (modes[i] == 2 ? link.on() : link.rest()).apply(draw).inverse();
    for (Change change : fault.changes()) {
      ohms = change instanceof Change.Raise raise && raise.link() == i ? ohms.plus(Phasor.of(raise.ohms())) : ohms;
    }
    Drive drive = driveOfLink.get(i);
    if (drive == null) {
      add("link" + i, node(link.a()), node(link.b()), ohms);
    } else {
      elements.add(Element.voltage("source" + i, "s" + i, node(link.b()), Phasor.of(volts(drive))));
      add("link" + i, node(link.a()), "s" + i, ohms);
    }
  }

  private double volts(Drive drive) {
    var other = fault.supplies().get(drive.part());
    return other == null ? drive.volts().applyAsDouble(draw) : other.at(draw.at(Tolerance.SUPPLY, drive.part()));
  }

  private void addExtra(Change change) {
    String name = "extra" + elements.size();
    if (change instanceof Change.Join join) {
      add(name, node(join.a()), node(join.b()), join.siemens().apply(draw).inverse());
    } else if (change instanceof Change.Bridge bridge && !arrangement.lifted(bridge.link())) {
      add(name, node(bridge.a()), node(bridge.b()), Phasor.of(bridge.ohms()));
    }
  }

  private void addCoupler(int i) {
    Coupler core = wiring.couplers().get(i);
    double ratio = core.ratio().applyAsDouble(draw);
    double ohms = core.ohms().applyAsDouble(draw);
    for (Change change : fault.changes()) {
      if (change instanceof Change.Core other && other.coupler() == i) {
        ratio *= other.timesRatio();
        ohms *= other.timesOhms();
      }
    }
    elements.add(new Element.Transformer("core" + i, node(core.pa()), node(core.pb()), "t" + i, node(core.sb()), ratio));
    add("leakage" + i, "t" + i, node(core.sa()), Coupler.admittance(ohms).inverse());
  }
}
