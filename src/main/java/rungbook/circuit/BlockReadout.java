package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Supplier;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.Spread;
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
  private final KnownReadings known;
  private final IdentityHashMap<EquipmentState, Written> tables = new IdentityHashMap<>();
  private final MeterReadout readout;
  private final double[] unsteady;
  private final Map<Spread, double[]> ranges = new HashMap<>();
  private final Map<byte[], Map<FaultedParameters, Map<Probe, double[]>>> direct = new TreeMap<>(Arrays::compare);
  private final List<Runnable> afterDirect = new ArrayList<>();

  /** Where the readings of a state go, and the probes to read. */
  private record Written(BlockTable table, List<Probe> probes) {}

  /** @param known what was read on the same block before */
  BlockReadout(CircuitModel model, KnownReadings known, List<EquipmentState> states, List<ReadingTable> tables,
      int block) {
    this.model = model;
    this.known = known;
    for (int i = 0; i < states.size(); i++) {
      this.tables.put(states.get(i), new Written(tables.get(i).block(block), tables.get(i).probes()));
    }
    readout = new MeterReadout(model);
    unsteady = new double[model.parameters().size()];
    Arrays.fill(unsteady, Reading.UNSTEADY);
  }

  private Written written(Start start) {
    return Objects.requireNonNull(tables.get(start.state()));
  }

  /** The nodes at which some probe is. */
  BitSet nodes() {
    var nodes = new BitSet();
    tables.values().stream().flatMap(written -> written.probes().stream()).forEach(probe -> {
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
  public void settled(Start start, SteadyState steadyState, Supplier<SolvedNetwork> network) {
    Written to = written(start);
    if (steadyState.converged()) {
      for (int p = 0; p < to.probes().size(); p++) {
        write(start, steadyState, p, network);
      }
    } else {
      for (int p = 0; p < to.probes().size(); p++) {
        to.table().write(start.number(), p, steadyState.samples(), unsteady);
      }
    }
    recordSights(to.table(), start, steadyState);
  }

  private void write(Start start, SteadyState steadyState, int p, Supplier<SolvedNetwork> network) {
    Written to = written(start);
    Probe probe = to.probes().get(p);
    if (probe.isOutside()) {
      to.table().write(start.number(), p, steadyState.samples(), outside(probe, start, steadyState));
      return;
    }
    double[] shown = known.find(probe, steadyState.modes(), start.faulted());
    if (shown == null) {
      shown = readAnew(probe, steadyState.modes(), start.faulted(), network);
    }
    write(start, steadyState, p, shown);
  }

  /** Each sample's own value of a quantity outside the circuit. */
  private double[] outside(Probe probe, Start start, SteadyState steadyState) {
    return model.logic()
        .range(probe.quantity(), steadyState.relays(), start.state().state(), start.fault())
        .map(range -> ranges.computeIfAbsent(range, one -> model.parameters().values(one::at))).orElse(unsteady);
  }

  private void write(Start start, SteadyState steadyState, int p, double[] shown) {
    Written to = written(start);
    Runnable writes = () -> to.table().write(start.number(), p, steadyState.samples(), shown);
    if (to.probes().get(p).meter() == MeterFunction.OHMS) {
      afterDirect.add(writes);
    } else {
      writes.run();
    }
  }

  /** Several states and groups of samples may settle in one network; its probes are read once. */
  private double[] readAnew(Probe probe, byte[] modes, FaultedParameters faulted, Supplier<SolvedNetwork> network) {
    if (probe.meter() == MeterFunction.OHMS) {
      return direct.computeIfAbsent(modes, key -> new LinkedHashMap<>())
          .computeIfAbsent(faulted, key -> new LinkedHashMap<>())
          .computeIfAbsent(probe, one -> read(one, modes, faulted, network.get()));
    }
    double[] shown = read(probe, modes, faulted, network.get());
    known.add(probe, modes, faulted, shown);
    return shown;
  }

  private double[] read(Probe probe, byte[] modes, FaultedParameters faulted, SolvedNetwork network) {
    double[] shown = new double[unsteady.length];
    readout.read(probe, network, modes, faulted, shown);
    return shown;
  }

  private void recordSights(BlockTable table, Start start, SteadyState steadyState) {
    var seen = new BitSet();
    for (int i = 0; i < model.logic().sights().size(); i++) {
      seen.set(i, model.logic().seen(i, steadyState.relays(), start.state().state(), start.fault()));
    }
    table.write(start.number(), steadyState.samples(), seen);
  }

  /** Reads ohms, where the circuit is not live, on the networks for direct current. */
  void readDirect(NetworkStructure structure) {
    if (!direct.isEmpty()) {
      var solver = new NetworkSolver(structure, model.parameters(), Current.DIRECT, model.healthy(), new BitSet());
      direct.forEach((modes, cases) -> {
        solver.moveTo(modes);
        cases.forEach((faulted, rows) -> {
          Cancellation.check();
          SolvedNetwork network = solver.solve(faulted);
          rows.forEach((probe, shown) -> {
            readOhms(probe, network, shown);
            known.add(probe, modes, faulted, shown);
          });
        });
      });
    }
    afterDirect.forEach(Runnable::run);
  }

  private void readOhms(Probe probe, SolvedNetwork network, double[] shown) {
    double[] ohms = new double[shown.length];
    readout.ohms(probe, network, ohms);
    for (int s = 0; s < shown.length; s++) {
      shown[s] = shown[s] == Reading.LIVE ? Reading.LIVE : ohms[s];
    }
  }
}
