package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.Current;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.sequence.SteadyStateSearch.Start;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.NetworkSolver;
import rungbook.circuit.solver.NetworkStructure;
import rungbook.circuit.solver.SolvedNetwork;
import rungbook.system.Terminal;

/** Writes what meters read and people see in the steady states of one block into the tables of their states. */
final class BlockReadout implements SteadyStateSearch.Listener {

  private final CircuitModel model;
  private final int first;
  private final IdentityHashMap<EquipmentState, ReadingTable> tables = new IdentityHashMap<>();
  private final MeterReadout readout;
  private final double[] unsteady;
  private double[][] shown = new double[0][];
  private @Nullable SolvedNetwork readNetwork;
  private List<Probe> readProbes = List.of();
  private final Map<byte[], Map<FaultedParameters, List<Settled>>> direct = new TreeMap<>(Arrays::compare);

  private record Settled(Start start, int[] samples) {}

  BlockReadout(CircuitModel model, int first, List<EquipmentState> states, List<ReadingTable> tables) {
    this.model = model;
    this.first = first;
    for (int i = 0; i < states.size(); i++) {
      this.tables.put(states.get(i), tables.get(i));
    }
    readout = new MeterReadout(model);
    unsteady = new double[model.parameters().size()];
    Arrays.fill(unsteady, Reading.UNSTEADY);
  }

  private ReadingTable table(Start start) {
    return Objects.requireNonNull(tables.get(start.state()));
  }

  /** The nodes at which some probe is. */
  BitSet nodes() {
    var nodes = new BitSet();
    tables.values().stream().flatMap(table -> table.probes().stream()).forEach(probe -> {
      node(probe.red(), nodes);
      node(probe.black(), nodes);
      if (probe.meter() == MeterFunction.AMPS) {
        model.network().node(probe.red()).flatMap(model.network()::conductorAt).ifPresent(i -> {
          Branch branch = model.network().branches().get(i);
          nodes.set(branch.a());
          nodes.set(branch.b());
        });
      }
    });
    return nodes;
  }

  private void node(Terminal terminal, BitSet nodes) {
    model.network().node(terminal).ifPresent(nodes::set);
  }

  @Override
  public void settled(Start start, SteadyState steadyState, SolvedNetwork network) {
    ReadingTable table = table(start);
    if (steadyState.converged()) {
      read(table.probes(), start, steadyState, network);
    }
    for (int p = 0; p < table.probes().size(); p++) {
      table.write(start.number(), p, first, steadyState.samples(), steadyState.converged() ? shown[p] : unsteady);
    }
    if (steadyState.converged() && table.probes().stream().anyMatch(BlockReadout::isOhms)) {
      direct.computeIfAbsent(steadyState.modes(), key -> new LinkedHashMap<>())
          .computeIfAbsent(start.faulted(), key -> new ArrayList<>())
          .add(new Settled(start, steadyState.samples()));
    }
    recordSights(table, start, steadyState);
  }

  /** Several states and groups of samples may settle in one network; its probes are read once. */
  private void read(List<Probe> probes, Start start, SteadyState steadyState, SolvedNetwork network) {
    if (network == readNetwork && probes.equals(readProbes)) {
      return;
    }
    readNetwork = network;
    readProbes = probes;
    if (shown.length < probes.size()) {
      shown = new double[probes.size()][unsteady.length];
    }
    for (int p = 0; p < probes.size(); p++) {
      readout.read(probes.get(p), network, steadyState.modes(), start.faulted(), shown[p]);
    }
  }

  private static boolean isOhms(Probe probe) {
    return probe.meter() == MeterFunction.OHMS;
  }

  private void recordSights(ReadingTable table, Start start, SteadyState steadyState) {
    var seen = new BitSet();
    for (int i = 0; i < model.logic().sights().size(); i++) {
      seen.set(i, model.logic().seen(i, steadyState.relays(), start.state().state(), start.faulted().fault()));
    }
    for (int sample : steadyState.samples()) {
      table.write(start.number(), first + sample, seen);
    }
  }

  /** Reads ohms, where the circuit is not live, on the networks for direct current. */
  void readDirect(NetworkStructure structure) {
    if (direct.isEmpty()) {
      return;
    }
    var solver = new NetworkSolver(structure, model.parameters(), Current.DIRECT, model.healthy(), new BitSet());
    direct.forEach((modes, cases) -> {
      solver.moveTo(modes);
      cases.forEach((faulted, all) -> {
        Cancellation.check();
        SolvedNetwork network = solver.solve(faulted);
        all.forEach(one -> readOhms(one, network));
      });
    });
  }

  private void readOhms(Settled settled, SolvedNetwork network) {
    ReadingTable table = table(settled.start());
    int number = settled.start().number();
    double[] ohms = new double[unsteady.length];
    for (int p = 0; p < table.probes().size(); p++) {
      if (isOhms(table.probes().get(p))) {
        readout.ohms(table.probes().get(p), network, ohms);
        int probe = p;
        int[] dead = Arrays.stream(settled.samples())
            .filter(sample -> table.reading(number, first + sample, probe) != Reading.LIVE).toArray();
        table.write(number, p, first, dead, ohms);
      }
    }
  }
}
