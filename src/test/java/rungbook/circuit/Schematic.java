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
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.NetworkSolver;
import rungbook.circuit.solver.TechnicianOverrides;

/**
 * One configuration of a wired system on one sample as a plain {@link Netlist}: for the general {@link Solver} and for
 * other programs. It is written from the links anew and shares no arithmetic with {@link NetworkSolver}.
 */
final class Schematic {

  private static final double JUMPER_OHMS = 0.02;

  private final CircuitNetwork network;
  private final FaultCase fault;
  private final Draw draw;
  private final byte[] modes;
  private final TechnicianOverrides overrides;
  private final List<Element> elements = new ArrayList<>();
  private final Map<Integer, SourceBranch> sourceOfBranch;

  private Schematic(CircuitNetwork network, FaultCase fault, Draw draw, byte[] modes, TechnicianOverrides overrides) {
    this.network = network;
    this.fault = fault;
    this.draw = draw;
    this.modes = modes;
    this.overrides = overrides;
    this.sourceOfBranch = network.sources().stream().collect(Collectors.toMap(SourceBranch::branch, source -> source));
  }

  static Netlist of(CircuitNetwork network, FaultCase fault, Draw draw, byte[] modes, TechnicianOverrides overrides) {
    var schematic = new Schematic(network, fault, draw, modes, overrides);
    for (int i = 0; i < modes.length; i++) {
      schematic.addBranch(i);
      if (overrides.jumpered(i)) {
        Branch branch = network.branches().get(i);
        schematic.add("jumper" + i, node(branch.a()), node(branch.b()), Phasor.of(JUMPER_OHMS));
      }
    }
    fault.changes().forEach(schematic::addExtra);
    for (int i = 0; i < network.cores().size(); i++) {
      schematic.addCore(i);
    }
    return new Netlist(network.hertz(), schematic.elements);
  }

  static String node(int number) {
    return String.valueOf(number);
  }

  private void add(String name, String a, String b, Phasor ohms) {
    if (!a.equals(b)) {
      elements.add(Element.impedance(name, a, b, ohms, network.hertz()));
    }
  }

  private void addBranch(int i) {
    if (BranchMode.conduction(modes[i]) == BranchMode.ABSENT || fault.changes().contains(new NetworkChange.Open(i))) {
      return;
    }
    Branch branch = network.branches().get(i);
    boolean isOn = BranchMode.conduction(modes[i]) == BranchMode.ON;
    Phasor ohms = (isOn ? branch.on() : branch.released()).apply(draw).inverse();
    for (NetworkChange change : fault.changes()) {
      ohms = changed(ohms, change, i);
    }
    SourceBranch source = sourceOfBranch.get(i);
    if (source == null) {
      add("link" + i, node(branch.a()), node(branch.b()), ohms);
    } else {
      elements.add(Element.voltage("source" + i, "s" + i, node(branch.b()), Phasor.of(volts(source))));
      add("link" + i, node(branch.a()), "s" + i, ohms);
    }
  }

  private Phasor changed(Phasor ohms, NetworkChange change, int i) {
    if (change instanceof NetworkChange.Raise raise && raise.branch() == i) {
      return ohms.plus(Phasor.of(raise.ohms().at(draw)));
    }
    if (change instanceof NetworkChange.Derate derate && derate.branch() == i) {
      return ohms.times(1 / derate.share().at(draw));
    }
    return change instanceof NetworkChange.Overload overload && overload.branch() == i && modes[i] == 2
        ? ohms.times(1 / overload.times().at(draw))
        : ohms;
  }

  private double volts(SourceBranch source) {
    var other = fault.supplies().get(source.part());
    return other == null ? source.volts().applyAsDouble(draw) : other.at(draw.at(Tolerance.SUPPLY, source.part()));
  }

  private void addExtra(NetworkChange change) {
    String name = "extra" + elements.size();
    if (change instanceof NetworkChange.Join join) {
      add(name, node(join.a()), node(join.b()), join.siemens().apply(draw).inverse());
    } else if (change instanceof NetworkChange.Bridge bridge && !overrides.disconnected(bridge.branch())) {
      add(name, node(bridge.a()), node(bridge.b()), Phasor.of(bridge.ohms().at(draw)));
    }
  }

  private void addCore(int i) {
    TransformerCore core = network.cores().get(i);
    double ratio = core.ratio().applyAsDouble(draw);
    double ohms = core.ohms().applyAsDouble(draw);
    for (NetworkChange change : fault.changes()) {
      if (change instanceof NetworkChange.Core other && other.index() == i) {
        ratio *= other.timesRatio();
        ohms *= other.timesOhms().at(draw);
      }
    }
    elements
        .add(new Element.Transformer("core" + i, node(core.pa()), node(core.pb()), "t" + i, node(core.sb()), ratio));
    add("leakage" + i, "t" + i, node(core.sa()), core.admittance(ohms).inverse());
  }
}
