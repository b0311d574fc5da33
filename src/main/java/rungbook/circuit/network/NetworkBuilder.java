package rungbook.circuit.network;

import static rungbook.circuit.network.Tolerance.CAPACITANCE;
import static rungbook.circuit.network.Tolerance.LENGTH;
import static rungbook.circuit.network.Tolerance.LOAD;
import static rungbook.circuit.network.Tolerance.SUPPLY;
import static rungbook.circuit.network.Tolerance.TEMPERATURE;
import static rungbook.circuit.network.Tolerance.TRANSFORMER;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Interval;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/** Turns parts into links. */
final class NetworkBuilder {

  private static final double CONTACT_OHMS = 0.02;

  /** Between the windings of a 40 VA transformer (common practice, no source). */
  private static final double WINDINGS_FARADS = 100e-12;

  /** Share of the rated volt-amperes that an unloaded transformer draws (common practice, no source). */
  private static final double MAGNETISING_SHARE = 0.15;

  private static final double MAGNETISING_POWER_FACTOR = 0.4;

  private final ControlSystem system;
  private final double radians;
  private final double hertz;
  private final Map<Terminal, Terminal> joined = new HashMap<>();
  private final Map<Terminal, Integer> nodes = new HashMap<>();
  private final List<Branch> links = new ArrayList<>();
  private final List<TransformerCore> couplers = new ArrayList<>();
  private final List<SourceBranch> drives = new ArrayList<>();
  private final Map<String, Integer> linkByKey = new HashMap<>();
  private int nodeCount = 1;

  NetworkBuilder(ControlSystem system) {
    this.system = system;
    this.hertz = system.parts(Part.Supply.class).mapToDouble(Part.Supply::hertz).findFirst().orElse(60);
    this.radians = 2 * Math.PI * hertz;
  }

  CircuitNetwork wire() {
    system.parts(Part.Joint.class).flatMap(joint -> joint.limbs().stream()).forEach(this::join);
    system.parts().forEach(this::wire);
    joined.keySet().forEach(this::node);
    system.faults().stream().flatMap(fault -> fault.effects().stream()).forEach(this::nodesOf);
    return new CircuitNetwork(system, hertz, nodes, nodeCount, links, couplers, drives, linkByKey);
  }

  /** Points that touch by a fault, though nothing else may be wired to them. */
  private void nodesOf(Effect effect) {
    if (effect instanceof Effect.Join join) {
      node(join.a());
      node(join.b());
    }
  }

  private void join(PartBranch limb) {
    Terminal a = top(limb.a());
    Terminal b = top(limb.b());
    if (!a.equals(b)) {
      joined.put(a.isGround() ? b : a, a.isGround() ? a : b); // ground stays on top
    }
  }

  private Terminal top(Terminal terminal) {
    Terminal at = terminal;
    while (joined.containsKey(at)) {
      at = joined.get(at);
    }
    return at;
  }

  private int node(Terminal terminal) {
    Terminal top = top(terminal);
    int node = top.isGround() ? 0 : nodes.computeIfAbsent(top, t -> nodeCount++);
    nodes.put(terminal, node);
    return node;
  }

  private void wire(Part part) {
    if (part instanceof Part.Supply supply) {
      supply.limbs().forEach(limb -> wireLeg(supply, limb));
    } else if (part instanceof Part.Fuse fuse) {
      fuse.limbs().forEach(limb -> add(contact(limb, fuse, Branch.Kind.FUSE)));
    } else if (part instanceof Part.Switch contact) {
      contact.limbs().forEach(limb -> add(contact(limb, contact, Branch.Kind.SWITCH)));
    } else if (part instanceof Part.Cable cable) {
      wireCable(cable);
    } else if (part instanceof Part.Wire wire) {
      wire.limbs().forEach(limb -> add(fixed(limb, wire, draw -> Phasor.of(1 / wire.ohms()))));
    } else if (part instanceof Part.Transformer transformer) {
      wireTransformer(transformer);
    } else if (part instanceof Part.Load load) {
      load.limbs().forEach(limb -> wireLoad(load, limb));
    } else if (part instanceof Part.Capacitor capacitor) {
      wireCapacitor(capacitor);
    }
  }

  private int add(Branch link) {
    linkByKey.putIfAbsent(link.key(), links.size());
    links.add(link);
    return links.size() - 1;
  }

  private Branch contact(PartBranch limb, Part part, Branch.Kind kind) {
    return Branch.contact(limb.key(), part.key(), node(limb.a()), node(limb.b()), kind, CONTACT_OHMS);
  }

  private Branch fixed(PartBranch limb, Part part, Function<Draw, Phasor> siemens) {
    return Branch.fixed(limb.key(), part.key(), node(limb.a()), node(limb.b()), siemens, siemens);
  }

  private void wireLeg(Part.Supply supply, PartBranch limb) {
    int link = add(fixed(limb, supply, draw -> Phasor.of(1 / supply.ohms())));
    drives.add(new SourceBranch(link, supply.key(), draw -> supply.volts().at(draw.at(SUPPLY, supply.key()))));
  }

  private void wireCable(Part.Cable cable) {
    Function<Draw,
        Phasor> siemens = draw -> Phasor.of(1 / Copper.ohms(cable.awg(), cable.feet().at(draw.at(LENGTH, cable.key())),
            cable.celsius().at(draw.at(TEMPERATURE, cable.key()))));
    cable.limbs().forEach(limb -> add(fixed(limb, cable, siemens)));
    List<PartBranch> limbs = cable.limbs();
    for (int i = 0; i < limbs.size(); i++) {
      for (int j = i + 1; j < limbs.size(); j++) {
        spread(cable, cable.picofaradsPerFoot(), limbs.get(i).a(), limbs.get(j).a());
        spread(cable, cable.picofaradsPerFoot(), limbs.get(i).b(), limbs.get(j).b());
      }
      spread(cable, cable.picofaradsPerFootToGround(), limbs.get(i).a(), ground());
      spread(cable, cable.picofaradsPerFootToGround(), limbs.get(i).b(), ground());
    }
  }

  private static Terminal ground() {
    return new Terminal(Terminal.GROUND, "");
  }

  /** Half of a cable's capacitance at each end, so that an open conductor keeps some on either side. */
  private void spread(Part.Cable cable, Interval picofaradsPerFoot, Terminal a, Terminal b) {
    if (node(a) != node(b)) {
      add(capacitance(cable.key() + " capacitance " + links.size(), cable.key() + " capacitance", node(a), node(b),
          draw -> 0.5e-12 * picofaradsPerFoot.at(draw.at(CAPACITANCE, cable.key()))
              * cable.feet().at(draw.at(LENGTH, cable.key()))));
    }
  }

  private Branch capacitance(String key, String part, int a, int b, ToDoubleFunction<Draw> farads) {
    return Branch.fixed(key, part, a, b, draw -> new Phasor(0, radians * farads.applyAsDouble(draw)),
        draw -> Phasor.ZERO);
  }

  /**
   * Half of the winding resistance lies in the primary, as in a transformer of balanced copper; a quarter in the
   * secondary's lead, the rest with the leakage in the core's series impedance.
   */
  private void wireTransformer(Part.Transformer t) {
    PartBranch primary = t.limbs().get(0);
    PartBranch secondary = t.limbs().get(1);
    Terminal core = Terminal.inside(t.key() + " primary winding");
    Terminal coil = Terminal.inside(t.key() + " secondary winding");
    ToDoubleFunction<Draw> ratio = draw -> t.noLoadVolts().at(draw.at(TRANSFORMER, t.key())) / t.primaryVolts();
    ToDoubleFunction<Draw> ohms = draw -> t.secondaryOhms().at(draw.at(TRANSFORMER, t.key()));
    add(fixed(new PartBranch(primary.name(), primary.a(), core), t,
        draw -> Phasor.of(square(ratio.applyAsDouble(draw)) * 2 / ohms.applyAsDouble(draw))));
    add(fixed(new PartBranch(secondary.name(), coil, secondary.a()), t,
        draw -> Phasor.of(4 / ohms.applyAsDouble(draw))));
    Phasor magnetising = Phasor.polar(t.voltAmps() * MAGNETISING_SHARE / square(t.primaryVolts()),
        -Math.toDegrees(Math.acos(MAGNETISING_POWER_FACTOR)));
    String inner = t.key() + " core";
    add(Branch.fixed(inner + " magnetising", inner, node(core), node(primary.b()), draw -> magnetising,
        draw -> Phasor.ZERO));
    add(capacitance(inner + " between windings", inner, node(core), node(coil), draw -> WINDINGS_FARADS));
    couplers.add(new TransformerCore(t.key(), node(core), node(primary.b()), node(coil), node(secondary.b()), ratio,
        draw -> ohms.applyAsDouble(draw) / 4, 1 / CONTACT_OHMS));
  }

  private static double square(double x) {
    return x * x;
  }

  private void wireLoad(Part.Load load, PartBranch limb) {
    Function<Draw, Double> share = draw -> 1 / (1 + Tolerance.LOAD_SHARE * draw.at(LOAD, load.key()));
    add(new Branch(limb.key(), load.key(), node(limb.a()), node(limb.b()), Branch.Kind.LOAD,
        draw -> siemens(load.restOhms()).times(share.apply(draw)),
        draw -> siemens(load.onOhms()).times(share.apply(draw)),
        draw -> Phasor.of(share.apply(draw) / load.wireOhms())));
  }

  private static Phasor siemens(Part.Impedance ohms) {
    return new Phasor(ohms.resistance(), ohms.reactance()).inverse();
  }

  private void wireCapacitor(Part.Capacitor capacitor) {
    for (int i = 0; i < capacitor.limbs().size(); i++) {
      PartBranch limb = capacitor.limbs().get(i);
      double farads = capacitor.microfarads().get(i) * 1e-6;
      add(capacitance(limb.key(), capacitor.key(), node(limb.a()), node(limb.b()), draw -> farads));
    }
  }
}
