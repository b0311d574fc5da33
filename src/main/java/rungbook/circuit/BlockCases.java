package rungbook.circuit;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Past;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.IslandCases;
import rungbook.circuit.sequence.RelayState;
import rungbook.circuit.sequence.SteadyStateSearch.Start;
import rungbook.circuit.solver.FaultedParameters;

/** The cases of a dictionary by number, with what each makes of the samples of one block. */
final class BlockCases {

  private final List<FaultCase> cases;
  private final FaultedParameters[] faulted;
  private final Map<String, Integer> numbers = new HashMap<>();

  /** @param islands receives each case of each batch */
  BlockCases(CircuitModel model, List<CaseBatch> batches, List<FaultCase> cases, IslandCases islands) {
    this.cases = cases;
    faulted = new FaultedParameters[cases.size()];
    for (int structure = 0; structure < batches.size(); structure++) {
      evaluate(model, batches.get(structure), structure, islands);
    }
    cases.forEach(one -> numbers.putIfAbsent(one.name(), numbers.size()));
  }

  /** Cases that change the network alike are one to the solver. */
  private void evaluate(CircuitModel model, CaseBatch batch, int structure, IslandCases islands) {
    Map<FaultCase, FaultedParameters> alike = new HashMap<>();
    batch.cases().stream()
        .forEach(i -> faulted[i] = alike.computeIfAbsent(cases.get(i).electrical(), model::faulted));
    alike.values().forEach(one -> islands.add(one, structure));
  }

  FaultCase get(int number) {
    return cases.get(number);
  }

  Start start(int number, EquipmentState state, int[] samples, RelayState relays) {
    return new Start(number, cases.get(number), faulted[number], state, samples, relays);
  }

  /** What has been repaired since was another case before. */
  int before(Past past, int number) {
    return past.repaired().map(numbers::get).orElse(number);
  }

  BitSet before(Past past, BitSet now) {
    var before = new BitSet();
    now.stream().map(i -> before(past, i)).forEach(before::set);
    return before;
  }
}
