package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.IslandCases;
import rungbook.circuit.sequence.KnownLevels;
import rungbook.circuit.sequence.RelayLogic;
import rungbook.circuit.sequence.RelayState;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.NetworkSolver;
import rungbook.circuit.solver.NetworkStructure;
import rungbook.circuit.solver.SolvedNetwork;

/** Settles a system for tests, one case and sample at a time, in a structure and with a solver of its own. */
final class Settle {

  /** The steady state of a case on one sample, its network solved anew, and the same circuit as a netlist. */
  record Result(String name, SteadyState steadyState, SolvedNetwork network, Netlist netlist) {}

  private Settle() {}

  /** @param dictionary of one sample, which is the draw */
  static Result of(Dictionary dictionary, CircuitState state, int number, Draw draw) {
    CircuitNetwork network = dictionary.network();
    FaultCase fault = dictionary.fault(number);
    var model = new CircuitModel(network, new RelayLogic(network), new Samples(List.of(draw)));
    EquipmentState equipment = EquipmentState.of(network, state);
    FaultedParameters faulted = model.faulted(fault);
    NetworkStructure structure = NetworkStructure.of(network, List.of(fault));
    SteadyState found = settle(model, structure, faulted, state, dictionary.opened(number, 0));
    return new Result(fault.name() + " " + state.positions(), found, solve(model, structure, faulted, found.modes()),
        Schematic.of(network, fault, draw, found.modes(), equipment.overrides()));
  }

  /** From where the state before left the relays; from everything dropped out where there is none. */
  private static SteadyState settle(CircuitModel model, NetworkStructure structure, FaultedParameters faulted,
      CircuitState state, Set<String> opened) {
    RelayState begins = state.past()
        .map(past -> model.logic().begun(settle(model, structure, faulted, past.before(), opened).relays(), state,
            faulted.fault()))
        .orElseGet(() -> model.logic().dropped(open(opened, state, model), state, faulted.fault()));
    var found = new ArrayList<SteadyState>();
    new SteadyStateSearch(model, SteadyStateSearch.solver(model, structure), known(model), new BitSet(),
        (start, steady, solved) -> found.add(steady))
        .run(List.of(new SteadyStateSearch.Start(0, faulted.fault(), faulted,
            EquipmentState.of(model.network(), state), new int[] {0}, begins)));
    return found.get(0);
  }

  private static KnownLevels known(CircuitModel model) {
    return new KnownLevels(model, new IslandCases(model.network()));
  }

  /** The fuses that are open after the first of these states that opens any. */
  static Set<String> opened(CircuitNetwork network, FaultCase fault, List<CircuitState> states, Draw draw) {
    var model = new CircuitModel(network, new RelayLogic(network), new Samples(List.of(draw)));
    NetworkStructure structure = NetworkStructure.of(network, List.of(fault));
    FaultedParameters faulted = model.faulted(fault);
    boolean[] intact = new boolean[model.logic().remembered().stayingOpen().size()];
    for (CircuitState state : states) {
      var opened = new HashSet<String>();
      new SteadyStateSearch(model, SteadyStateSearch.solver(model, structure), known(model), new BitSet(),
          (start, steady, solved) -> IntStream.range(0, intact.length).filter(i -> steady.relays().blown[i])
              .forEach(i -> opened.add(model.logic().remembered().stayingOpen().get(i))))
          .run(List.of(new SteadyStateSearch.Start(0, fault, faulted, EquipmentState.of(network, state), new int[] {0},
              model.logic().dropped(intact, state, fault))));
      if (!opened.isEmpty()) {
        return opened;
      }
    }
    return Set.of();
  }

  /** Which fuses are open when a state begins. */
  private static boolean[] open(Set<String> opened, CircuitState state, CircuitModel model) {
    boolean[] open = new boolean[model.logic().remembered().stayingOpen().size()];
    for (int i = 0; i < open.length; i++) {
      String key = model.logic().remembered().stayingOpen().get(i);
      open[i] = opened.contains(key) && !state.replaced().contains(key);
    }
    return open;
  }

  /** The network of these modes, with nothing taken over from another. */
  private static SolvedNetwork solve(CircuitModel model, NetworkStructure structure, FaultedParameters faulted,
      byte[] modes) {
    var everywhere = new BitSet();
    IntStream.range(0, model.network().nodeCount()).forEach(everywhere::set);
    var solver = new NetworkSolver(structure, model.parameters(), Current.ALTERNATING, model.healthy(), everywhere);
    solver.moveTo(modes);
    return solver.solve(faulted);
  }
}
