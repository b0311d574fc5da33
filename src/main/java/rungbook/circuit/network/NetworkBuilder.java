package rungbook.circuit.network;

import static rungbook.circuit.network.Tolerance.CAPACITANCE;
import static rungbook.circuit.network.Tolerance.LENGTH;
import static rungbook.circuit.network.Tolerance.SUPPLY;
import static rungbook.circuit.network.Tolerance.TEMPERATURE;
import static rungbook.circuit.network.Tolerance.TRANSFORMER;
import static rungbook.system.Part.CONTACT_OHMS;

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

/** Builds the network's nodes and branches from the system's parts. */
final class NetworkBuilder {

  private final ControlSystem system;
  private final double radiansPerSecond;
  private final double hertz;
  private final Map<Terminal, Terminal> joined = new HashMap<>();
  private final Map<Terminal, Integer> nodes = new HashMap<>();
  private final List<Branch> branches = new ArrayList<>();
  private final List<TransformerCore> cores = new ArrayList<>();
  private final List<SourceBranch> sources = new ArrayList<>();
  private final Map<String, Integer> branchByKey = new HashMap<>();
  private int nodeCount = 1;

  NetworkBuilder(ControlSystem system) {
    this.system = system;
    this.hertz = system.parts(Part.Supply.class).mapToDouble(Part.Supply::hertz).findFirst().orElse(60);
    this.radiansPerSecond = 2 * Math.PI * hertz;
  }

  CircuitNetwork build() {
    system.parts(Part.Joint.class).flatMap(joint -> joint.branches().stream()).forEach(this::join);
    system.parts().forEach(this::add);
    joined.keySet().forEach(this::node);
    system.faults().stream().flatMap(fault -> fault.effects().stream()).forEach(this::nodesOf);
    return new CircuitNetwork(system, hertz, nodes, nodeCount, branches, cores, sources, branchByKey);
  }

  /** Gives a node to the terminals that a fault joins, since nothing else may be wired to them. */
  private void nodesOf(Effect effect) {
    if (effect instanceof Effect.Join join) {
      node(join.a());
      node(join.b());
    }
  }

  private void join(PartBranch branch) {
    Terminal a = root(branch.a());
    Terminal b = root(branch.b());
    if (!a.equals(b)) {
      joined.put(a.isGround() ? b : a, a.isGround() ? a : b); // ground is always a root
    }
  }

  private Terminal root(Terminal terminal) {
    Terminal at = terminal;
    while (joined.containsKey(at)) {
      at = joined.get(at);
    }
    return at;
  }

  private int node(Terminal terminal) {
    Terminal root = root(terminal);
    int node = root.isGround() ? 0 : nodes.computeIfAbsent(root, t -> nodeCount++);
    nodes.put(terminal, node);
    return node;
  }

  private void add(Part part) {
    if (part instanceof Part.Supply supply) {
      supply.branches().forEach(branch -> addSource(supply, branch));
    } else if (part instanceof Part.Fuse fuse) {
      fuse.branches().forEach(branch -> add(contact(branch, fuse, fuse.ohms(), Branch.Kind.FUSE)));
    } else if (part instanceof Part.Switch contact) {
      contact.branches().forEach(branch -> add(contact(branch, contact, contact.ohms(), Branch.Kind.SWITCH)));
    } else if (part instanceof Part.Cable cable) {
      addCable(cable);
    } else if (part instanceof Part.Wire wire) {
      wire.branches().forEach(branch -> add(fixed(branch, wire, draw -> Phasor.of(1 / ohms(wire, wire.ohms(), draw)))));
    } else if (part instanceof Part.Transformer transformer) {
      addTransformer(transformer);
    } else if (part instanceof Part.Load load) {
      load.branches().forEach(branch -> addLoad(load, branch));
    } else if (part instanceof Part.Capacitor capacitor) {
      addCapacitor(capacitor);
    }
  }

  private int add(Branch branch) {
    branchByKey.putIfAbsent(branch.key(), branches.size());
    branches.add(branch);
    return branches.size() - 1;
  }

  private Branch contact(PartBranch branch, Part part, Interval ohms, Branch.Kind kind) {
    return Branch.contact(branch.key(), part.key(), node(branch.a()), node(branch.b()), kind,
        draw -> Phasor.of(1 / ohms(part, ohms, draw)));
  }

  private Branch fixed(PartBranch branch, Part part, Function<Draw, Phasor> siemens) {
    return Branch.fixed(branch.key(), part.key(), node(branch.a()), node(branch.b()), siemens, siemens);
  }

  private void addSource(Part.Supply supply, PartBranch branch) {
    int index = add(fixed(branch, supply, draw -> Phasor.of(1 / ohms(supply, supply.ohms(), draw))));
    sources.add(new SourceBranch(index, supply.key(), draw -> supply.volts().at(draw.at(SUPPLY, supply.key()))));
  }

  private static double ohms(Part part, Interval ohms, Draw draw) {
    return ohms.at(draw.at(TEMPERATURE, part.key()));
  }

  private void addCable(Part.Cable cable) {
    Function<Draw,
        Phasor> siemens = draw -> Phasor.of(1 / Copper.ohms(cable.awg(), cable.feet().at(draw.at(LENGTH, cable.key())),
            cable.celsius().at(draw.at(TEMPERATURE, cable.key()))));
    cable.branches().forEach(branch -> add(fixed(branch, cable, siemens)));
    List<PartBranch> conductors = cable.branches();
    for (int i = 0; i < conductors.size(); i++) {
      for (int j = i + 1; j < conductors.size(); j++) {
        addCapacitance(cable, cable.picofaradsPerFoot(), conductors.get(i).a(), conductors.get(j).a());
        addCapacitance(cable, cable.picofaradsPerFoot(), conductors.get(i).b(), conductors.get(j).b());
      }
      addCapacitance(cable, cable.picofaradsPerFootToGround(), conductors.get(i).a(), ground());
      addCapacitance(cable, cable.picofaradsPerFootToGround(), conductors.get(i).b(), ground());
    }
  }

  private static Terminal ground() {
    return new Terminal(Terminal.GROUND, "");
  }

  /** Half of a cable's capacitance at each end, so that an open conductor keeps some on either side. */
  private void addCapacitance(Part.Cable cable, Interval picofaradsPerFoot, Terminal a, Terminal b) {
    if (node(a) != node(b)) {
      add(capacitance(cable.key() + " capacitance " + branches.size(), cable.key() + " capacitance", node(a), node(b),
          draw -> 0.5e-12 * picofaradsPerFoot.at(draw.at(CAPACITANCE, cable.key()))
              * cable.feet().at(draw.at(LENGTH, cable.key()))));
    }
  }

  private Branch capacitance(String key, String part, int a, int b, ToDoubleFunction<Draw> farads) {
    return Branch.fixed(key, part, a, b, draw -> new Phasor(0, radiansPerSecond * farads.applyAsDouble(draw)),
        draw -> Phasor.ZERO);
  }

  /**
   * Half of the winding resistance is in the primary, as in a transformer of balanced copper; a quarter in the
   * secondary's lead, the rest with the leakage in the core's series impedance.
   */
  private void addTransformer(Part.Transformer t) {
    PartBranch primary = t.branches().get(0);
    PartBranch secondary = t.branches().get(1);
    Terminal core = Terminal.inside(t.key() + " primary winding");
    Terminal coil = Terminal.inside(t.key() + " secondary winding");
    ToDoubleFunction<Draw> ratio = draw -> t.noLoadVolts().at(draw.at(TRANSFORMER, t.key())) / t.primaryVolts();
    ToDoubleFunction<Draw> ohms = draw -> t.secondaryOhms().at(draw.at(TRANSFORMER, t.key()));
    add(fixed(new PartBranch(primary.name(), primary.a(), core), t,
        draw -> Phasor.of(square(ratio.applyAsDouble(draw)) * 2 / ohms.applyAsDouble(draw))));
    add(fixed(new PartBranch(secondary.name(), coil, secondary.a()), t,
        draw -> Phasor.of(4 / ohms.applyAsDouble(draw))));
    Phasor magnetizing = Phasor.polar(t.voltAmps() * t.core().magnetizingShare() / square(t.primaryVolts()),
        -Math.toDegrees(Math.acos(t.core().magnetizingPowerFactor())));
    String inner = t.key() + " core";
    add(Branch.fixed(inner + " magnetizing", inner, node(core), node(primary.b()), draw -> magnetizing,
        draw -> Phasor.ZERO));
    add(capacitance(inner + " between windings", inner, node(core), node(coil), draw -> 1e-12 * t.core().picofarads()));
    cores.add(new TransformerCore(t.key(), node(core), node(primary.b()), node(coil), node(secondary.b()), ratio,
        draw -> ohms.applyAsDouble(draw) / 4, t.core().reactanceShare(), 1 / CONTACT_OHMS));
  }

  private static double square(double x) {
    return x * x;
  }

  private void addLoad(Part.Load load, PartBranch branch) {
    add(new Branch(branch.key(), load.key(), node(branch.a()), node(branch.b()), Branch.Kind.LOAD,
        draw -> new LoadDraw(load, draw).siemens(load.inrush()), draw -> new LoadDraw(load, draw).siemens(load.on()),
        draw -> Phasor.of(1 / new LoadDraw(load, draw).wireOhms())));
  }

  private void addCapacitor(Part.Capacitor capacitor) {
    for (int i = 0; i < capacitor.branches().size(); i++) {
      PartBranch branch = capacitor.branches().get(i);
      Interval microfarads = capacitor.microfarads().get(i);
      add(capacitance(branch.key(), capacitor.key(), node(branch.a()), node(branch.b()),
          draw -> 1e-6 * microfarads.at(draw.at(CAPACITANCE, branch.key()))));
    }
  }
}
