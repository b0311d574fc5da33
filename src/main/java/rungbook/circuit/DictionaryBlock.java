package rungbook.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Past;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.circuit.sequence.IslandCases;
import rungbook.circuit.sequence.KnownLevels;
import rungbook.circuit.sequence.RelayState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.sequence.SteadyStateSearch.Start;
import rungbook.circuit.solver.NetworkSolver;

/** All cases of a dictionary on one block of its samples. One thread works on a block at a time. */
final class DictionaryBlock {

  private final CircuitModel model;
  private final int number;
  private final int first;
  private final List<CaseBatch> batches;
  private final BlockCases cases;
  private final OpenedBefore opened;
  private final KnownLevels levels;
  private final KnownReadings readings;
  private final KnownStates left = new KnownStates();
  private final Map<CircuitState, EquipmentState> equipment = new HashMap<>();
  private final boolean remembers;
  private final ReentrantLock working = new ReentrantLock(true);

  /** Of the batch that was solved last: it takes a while to set up, and much space. */
  private @Nullable BatchSolver solver;

  private record BatchSolver(CaseBatch batch, NetworkSolver solver) {}

  /**
   * @param number of the block
   * @param first the first sample of the block
   */
  DictionaryBlock(CircuitModel model, int number, int first, List<CaseBatch> batches, List<FaultCase> cases) {
    this.model = model;
    this.number = number;
    this.first = first;
    IslandCases islandCases = new IslandCases(model.network());
    levels = new KnownLevels(model, islandCases);
    readings = new KnownReadings(model.network(), islandCases);
    remembers = HoldingCircuits.anyIn(model.network());
    this.batches = batches;
    this.cases = new BlockCases(model, batches, cases, islandCases);
    opened = new OpenedBefore(cases.size(), samples(), model.logic().remembered().stayingOpen().size());
  }

  int first() {
    return first;
  }

  int samples() {
    return model.parameters().size();
  }

  /** What a case has opened before the technician arrives, in one sample of the block. */
  boolean[] opened(int caseNumber, int sample) {
    return opened.of(caseNumber, sample);
  }

  /**
   * Finds the fuses that each fault has blown before the technician arrives: in each sample, those that open at the
   * first position of the controls that opens any.
   *
   * @param positions of the controls, by case
   */
  void findBlown(EquipmentState start, List<ControlPositions> positions) {
    long most = positions.stream().mapToLong(ControlPositions::count).max().orElse(0);
    for (CaseBatch batch : batches) {
      for (long i = 0; i < most; i++) {
        findBlown(start, positions, batch, i);
      }
    }
  }

  private void findBlown(EquipmentState start, List<ControlPositions> positions, CaseBatch batch, long number) {
    var starts = new ArrayList<Start>();
    batch.cases().stream().filter(i -> number < positions.get(i).count()).forEach(i -> {
      int[] intact = opened.without(i);
      if (intact.length > 0) {
        starts.add(dropped(i, start.at(positions.get(i).state(number)), intact, opened.of(i, intact[0])));
      }
    });
    if (!starts.isEmpty()) {
      search(batch, new BitSet(), starts,
          (one, steady, network) -> opened.note(one.number(), steady.samples(), steady.relays().blown));
    }
  }

  /** A search that is given up halfway leaves its solver behind. */
  private void search(CaseBatch batch, BitSet wanted, List<Start> starts, SteadyStateSearch.Listener listener) {
    BatchSolver with = solver;
    solver = null;
    if (with == null || !with.batch().equals(batch)) {
      with = new BatchSolver(batch, SteadyStateSearch.solver(model, batch.structure()));
    }
    new SteadyStateSearch(model, with.solver(), levels, wanted, listener).run(starts);
    solver = with;
  }

  /**
   * Reads all probes of some states, in the tables of the same order.
   *
   * @param wanted the cases to read
   */
  void read(List<EquipmentState> states, List<ReadingTable> tables, BitSet wanted) {
    Cancellation.lock(working);
    try {
      batches.forEach(batch -> read(batch, states, tables, wanted));
      forgetTooMany();
    } finally {
      working.unlock();
    }
  }

  private void read(CaseBatch batch, List<EquipmentState> states, List<ReadingTable> tables, BitSet wanted) {
    BitSet numbers = numbers(batch, wanted);
    states.forEach(state -> state.state().past().ifPresent(past -> {
      followBefore(past, batch, numbers);
      followDelays(state.state(), batch, numbers);
    }));
    var starts = new ArrayList<Start>();
    for (EquipmentState state : states) {
      numbers.stream().forEach(i -> starts.addAll(left.settles(state.state(), i) ? settled(i, state)
          : starts(i, state)));
    }
    if (!starts.isEmpty()) {
      var readout = new BlockReadout(model, readings, states, tables, number);
      var found = new KnownStates.Found();
      search(batch, readout.nodes(), starts, !remembers ? readout : (start, steady, network) -> {
        readout.settled(start, steady, network);
        found.settled(start, steady);
      });
      left.add(found);
      readout.readDirect(batch.structure());
    }
  }

  private static BitSet numbers(CaseBatch batch, BitSet wanted) {
    var numbers = (BitSet) batch.cases().clone();
    numbers.and(wanted);
    return numbers;
  }

  /**
   * How each sample of some cases is left in a state.
   *
   * @param into receives a row for each of the cases
   */
  void leave(CircuitState state, BitSet wanted, Map<Integer, RelayState[]> into) {
    Cancellation.lock(working);
    try {
      batches.forEach(batch -> follow(state, batch, numbers(batch, wanted)));
      into.forEach((i, relays) -> left.of(state, i).forEach(group -> {
        for (int sample : group.samples()) {
          relays[first + sample] = group.relays();
        }
      }));
      forgetTooMany();
    } finally {
      working.unlock();
    }
  }

  private void forgetTooMany() {
    levels.forgetTooMany();
    readings.forgetTooMany();
    if (left.forgetTooMany()) {
      equipment.clear();
    }
  }

  /** Follows cases to a state, from the last one to which they are known to have come. */
  private void follow(CircuitState state, CaseBatch batch, BitSet numbers) {
    var way = new ArrayDeque<CircuitState>();
    Optional<CircuitState> next = Optional.of(state);
    while (next.filter(one -> !left.hasAll(one, numbers)).isPresent()) {
      way.push(next.get());
      Optional<Past> past = next.get().past();
      past.filter(one -> !cases.before(one, numbers).equals(numbers))
          .ifPresent(one -> followBefore(one, batch, numbers));
      next = past.filter(one -> cases.before(one, numbers).equals(numbers)).map(Past::before);
    }
    way.forEach(one -> followOne(one, batch, numbers));
  }

  /** What has been repaired since was another case before. */
  private void followBefore(Past past, CaseBatch batch, BitSet numbers) {
    BitSet before = cases.before(past, numbers);
    if (before.equals(numbers)) {
      follow(past.before(), batch, numbers);
    } else {
      batches.forEach(one -> follow(past.before(), one, numbers(one, before)));
    }
  }

  /** Where nothing is held, a delay runs only if a timer is left otherwise than before. */
  private void followDelays(CircuitState state, CaseBatch batch, BitSet numbers) {
    if (model.logic().remembered().hasDelays()) {
      followOne(state.alone(), batch, numbers);
    }
  }

  /** A case in which nothing is held before is left as if everything had been dropped out before. */
  private void followOne(CircuitState state, CaseBatch batch, BitSet numbers) {
    var missing = (BitSet) numbers.clone();
    numbers.stream().filter(i -> left.has(state, i)).forEach(missing::clear);
    state.past().ifPresent(past -> followDelays(state, batch, missing));
    var free = new BitSet();
    missing.stream().filter(i -> state.past().isPresent() && isFree(i, state)).forEach(free::set);
    if (!free.isEmpty()) {
      followOne(state.alone(), batch, free);
      free.stream().forEach(i -> left.copy(state.alone(), state, i));
      missing.andNot(free);
    }
    List<Start> starts = missing.stream().boxed().flatMap(i -> starts(i, equipment(state)).stream()).toList();
    if (!starts.isEmpty()) {
      var found = new KnownStates.Found();
      search(batch, new BitSet(), starts, (start, steady, network) -> found.settled(start, steady));
      left.add(found);
    }
  }

  /** Whether nothing is held, and no delay runs, in any sample of a case in the state that this one comes from. */
  private boolean isFree(int number, CircuitState state) {
    Past past = state.past().orElseThrow();
    RelayState[] alone = new RelayState[samples()];
    if (model.logic().remembered().hasDelays()) {
      if (!left.settles(state.alone(), number)) {
        return false;
      }
      left.of(state.alone(), number)
          .forEach(group -> IntStream.of(group.samples()).forEach(sample -> alone[sample] = group.relays()));
    }
    return left.of(past.before(), cases.before(past, number)).stream().noneMatch(group -> IntStream.of(group.samples())
        .anyMatch(sample -> model.logic().remembered().isHeld(group.relays(), state, opened.of(number, sample))
            || model.logic().remembered().isDelayed(group.relays(), alone[sample])));
  }

  /** Hands do the same to the branches wherever a state comes from. */
  private EquipmentState equipment(CircuitState state) {
    return equipment.computeIfAbsent(state.alone(), alone -> EquipmentState.of(model.network(), alone)).at(state);
  }

  /** From where a case is known to be left in the state. */
  private List<Start> settled(int number, EquipmentState state) {
    return left.of(state.state(), number).stream()
        .map(group -> cases.start(number, state, group.samples(), group.relays())).toList();
  }

  private List<Start> starts(int number, EquipmentState state) {
    return state.state().past().filter(past -> !isFree(number, state.state()))
        .map(past -> left.of(past.before(), cases.before(past, number)).stream()
            .map(group -> cases.start(number, state, group.samples(), model.logic().begun(group.relays(), state.state(),
                cases.get(number))))
            .toList())
        .orElseGet(() -> dropped(number, state));
  }

  private Start dropped(int number, EquipmentState state, int[] samples, boolean[] open) {
    return cases.start(number, state, samples, model.logic().dropped(open, state.state(), cases.get(number)));
  }

  /** One group of samples for each set of fuses that a case has blown; all else is dropped out. */
  private List<Start> dropped(int number, EquipmentState state) {
    return opened.alike(number).stream().map(alike -> dropped(number, state, alike,
        model.logic().remembered().intact(opened.of(number, alike[0]), state.state().replaced()))).toList();
  }
}
