package rungbook.circuit.solver;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.SourceBranch;
import rungbook.circuit.network.TransformerCore;

/** Puts the admittances and sources of one configuration into a factorized network, as far as they have changed. */
final class NetworkAssembly {

  private final NetworkStructure structure;
  private final CircuitNetwork network;
  private final Admittances admittances;
  private final CoreStamps cores;
  private final FactorizedNetwork factorized;
  private final double[] zero;
  private final double[] jumper;
  private final double[] tie;
  private BitSet tied = new BitSet();
  private byte[] modes;
  private FaultedParameters faulted;

  /** A network of no branches, with the cores alone. */
  NetworkAssembly(NetworkStructure structure, Admittances admittances, CoreStamps cores, FaultedParameters healthy,
      int samples) {
    this.structure = structure;
    this.network = structure.network();
    this.admittances = admittances;
    this.cores = cores;
    this.faulted = healthy;
    factorized = new FactorizedNetwork(structure.order(), samples);
    zero = new double[samples];
    jumper = each(1 / BranchMode.JUMPER_OHMS, samples);
    tie = each(1, samples);
    modes = new byte[network.branches().size()];
    network.cores().forEach(this::assemble);
  }

  private static double[] each(double value, int samples) {
    double[] row = new double[samples];
    Arrays.fill(row, value);
    return row;
  }

  FactorizedNetwork factorized() {
    return factorized;
  }

  /** Becomes the same network as another. */
  void become(NetworkAssembly other) {
    factorized.become(other.factorized);
    tied = other.tied;
    modes = other.modes;
    faulted = other.faulted;
  }

  /** From now on, what is assembled is in these modes and with this fault. */
  void configure(byte[] nowModes, FaultedParameters nowFaulted) {
    modes = nowModes;
    faulted = nowFaulted;
  }

  void assemble(TransformerCore core) {
    int[] nodes = core.nodes();
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        assemble(nodes[i], nodes[j]);
      }
    }
  }

  /** Adds up all that is between two nodes, always in the same order. */
  void assemble(int a, int b) {
    if (a == b) {
      return;
    }
    SummedRows own = factorized.changeBetween(a, b);
    int slot = structure.order().slot(a, b);
    own.clear(slot);
    for (int branch : structure.branchesBetween(a, b)) {
      addBranch(branch, own, slot);
    }
    for (FaultedParameters.Extra extra : faulted.extras()) {
      if (isBetween(extra.siemens(), a, b) && isPresent(extra)) {
        own.add(slot, extra.siemens().re(), extra.siemens().im());
      }
    }
    for (int core : structure.coresBetween(a, b)) {
      cores.of(core, faulted.changes(core)).stream().filter(stamp -> isBetween(stamp, a, b))
          .forEach(stamp -> own.add(slot, stamp.re(), stamp.im()));
    }
    if (Math.min(a, b) == 0 && tied.get(Math.max(a, b))) {
      own.add(slot, tie, zero);
    }
  }

  private void addBranch(int branch, SummedRows own, int slot) {
    byte conduction = BranchMode.conduction(modes[branch]);
    if (conduction != BranchMode.ABSENT && !faulted.opens(branch) && admittances.conducts(branch)) {
      BranchAdmittance siemens = faulted.effective(branch, admittances.of(conduction));
      own.add(slot, siemens.re(), siemens.im());
    }
    if (BranchMode.isJumpered(modes[branch])) {
      own.add(slot, jumper, zero);
    }
  }

  private static boolean isBetween(BranchAdmittance siemens, int a, int b) {
    return (siemens.a() == a && siemens.b() == b) || (siemens.a() == b && siemens.b() == a);
  }

  /** A bridge inside a contact conducts while the contact is open; disconnecting the part takes it away. */
  boolean isPresent(FaultedParameters.Extra extra) {
    return extra.branch() < 0 || !BranchMode.isDisconnected(modes[extra.branch()]);
  }

  /**
   * Adds 1 S from a node of each floating component to ground; no current flows there, so its size does not matter.
   */
  void tie(BitSet floating) {
    var changed = (BitSet) tied.clone();
    changed.xor(floating);
    tied = floating;
    changed.stream().forEach(node -> assemble(0, node));
  }

  /** Adds up the currents of the sources at the two nodes of each source. */
  void assembleSources() {
    List<SourceBranch> sources = network.sources();
    sources.forEach(source -> {
      Branch branch = network.branches().get(source.branch());
      assembleSource(branch.a());
      assembleSource(branch.b());
    });
  }

  private void assembleSource(int node) {
    if (node == 0) {
      return;
    }
    SummedRows source = factorized.changeSource(node);
    source.clear(node);
    for (int i = 0; i < network.sources().size(); i++) {
      Branch branch = network.branches().get(network.sources().get(i).branch());
      if (BranchMode.conduction(modes[network.sources().get(i).branch()]) == BranchMode.ABSENT) {
        continue;
      }
      ComplexRows in = faulted.currents();
      ComplexRows out = faulted.returnCurrents();
      if (branch.a() == node) {
        source.add(node, in.re[i], in.im[i]);
      }
      if (branch.b() == node) {
        source.add(node, out.re[i], out.im[i]);
      }
    }
  }

  /** The components of the network, with what the fault opens and adds. */
  ConnectedComponents components() {
    var components = new ConnectedComponents(network.nodeCount());
    for (int i = 0; i < modes.length; i++) {
      boolean carries = BranchMode.conduction(modes[i]) != BranchMode.ABSENT && !faulted.opens(i)
          && admittances.conducts(i);
      if (carries || BranchMode.isJumpered(modes[i])) {
        Branch branch = network.branches().get(i);
        components.join(branch.a(), branch.b());
      }
    }
    network.cores().forEach(core -> {
      components.join(core.pa(), core.pb());
      components.join(core.sa(), core.sb());
    });
    faulted.extras().stream().filter(this::isPresent)
        .forEach(extra -> components.join(extra.siemens().a(), extra.siemens().b()));
    return components;
  }
}
