package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.RelayLogic;
import rungbook.circuit.sequence.RelayState;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;

/**
 * Fault dictionary: what a meter shows in any circuit state, for the healthy system and every fault, on every sample.
 *
 * <p>The samples are divided into blocks, and the blocks are solved on all cores. The division does not depend on the
 * machine, so neither do the readings.
 */
public final class Dictionary {

  /** Samples of a block at most: few enough for its rows to stay in a core's cache, enough for long loops. */
  private static final int BLOCK = 256;

  private final CircuitNetwork network;
  private final RelayLogic logic;
  private final Samples samples;
  private final List<FaultCase> cases;
  private final List<DictionaryBlock> blocks;

  private Dictionary(CircuitNetwork network, Samples samples, List<FaultCase> cases) {
    this.network = network;
    this.logic = new RelayLogic(network);
    this.samples = samples;
    this.cases = cases;
    List<CaseBatch> batches = CaseBatch.of(network, cases);
    CircuitState start = CircuitState.start(network.system().vocabulary());
    EquipmentState equipment = EquipmentState.of(network, start);
    List<ControlPositions> positions = ControlPositions.of(network, cases);
    int[] sizes = blockSizes(samples.size());
    DictionaryBlock[] made = new DictionaryBlock[sizes.length];
    ParallelTasks.run(sizes.length, i -> {
      made[i] = block(i, sizes, batches);
      made[i].findBlown(equipment, positions);
    });
    blocks = List.of(made);
  }

  /** Blocks of nearly the same size. */
  static int[] blockSizes(int samples) {
    int count = (samples + BLOCK - 1) / BLOCK;
    return IntStream.range(0, count).map(i -> (i + 1) * samples / count - i * samples / count).toArray();
  }

  private DictionaryBlock block(int number, int[] sizes, List<CaseBatch> batches) {
    int first = IntStream.of(sizes).limit(number).sum();
    var model = new CircuitModel(network, logic,
        new Samples(samples.draws().subList(first, first + sizes[number])));
    return new DictionaryBlock(model, number, first, batches, cases);
  }

  /**
   * Builds the dictionary of the healthy system and every single fault.
   *
   * @param system a system that was read without problems
   */
  public static Dictionary of(ControlSystem system, Samples samples) {
    return of(system, samples, system.faults().stream().map(List::of).toList());
  }

  /**
   * Builds the dictionary of the healthy system and of several faults at once.
   *
   * @param system a system that was read without problems
   * @param together the faults of each case, at least one
   */
  public static Dictionary of(ControlSystem system, Samples samples, List<List<Fault>> together) {
    CircuitNetwork network = CircuitNetwork.of(system);
    var cases = new ArrayList<FaultCase>();
    cases.add(FaultCase.HEALTHY);
    var single = new IdentityHashMap<Fault, FaultCase>();
    together.forEach(faults -> cases.add(faults.stream()
        .map(fault -> single.computeIfAbsent(fault, one -> FaultCase.of(one, network)))
        .reduce(FaultCase::and).orElseThrow()));
    return new Dictionary(network, samples, List.copyOf(cases));
  }

  public CircuitNetwork network() {
    return network;
  }

  public int samples() {
    return samples.size();
  }

  /** The keys of the cases of a dictionary of these faults. */
  public static List<String> cases(List<List<Fault>> together) {
    return Stream.concat(Stream.of(FaultCase.HEALTHY.name()), together.stream().map(FaultCase::name)).toList();
  }

  /** The key of each case: {@code healthy}, then the faults in their order. */
  public List<String> cases() {
    return cases.stream().map(FaultCase::name).toList();
  }

  FaultCase fault(int caseNumber) {
    return cases.get(caseNumber);
  }

  /** A table of which no case is solved yet. */
  ReadingTable empty(List<Probe> probes) {
    return ReadingTable.empty(probes, logic.sights(), cases.size(), samples());
  }

  /**
   * Solves cases of several circuit states, and adds them to the tables of the states. Together they cost less than one
   * after the other, since many have networks in common.
   */
  public void solve(Map<CircuitState, ReadingTable> tables, BitSet wanted) {
    List<EquipmentState> states = tables.keySet().stream().map(state -> EquipmentState.of(network, state)).toList();
    List<ReadingTable> inOrder = List.copyOf(tables.values());
    ParallelTasks.run(blocks.size(), i -> blocks.get(i).read(states, inOrder, wanted));
  }

  /** Solves one circuit state for every case. */
  public ReadingTable table(CircuitState state, List<Probe> probes) {
    var every = new BitSet();
    every.set(0, cases.size());
    return table(state, probes, every);
  }

  /** Solves one circuit state for some cases; the other cases' rows of the table hold no readings. */
  ReadingTable table(CircuitState state, List<Probe> probes, BitSet wanted) {
    ReadingTable table = empty(probes);
    solve(Map.of(state, table), wanted);
    return table;
  }

  /** For some cases, how each sample is left in a state. */
  public Map<Integer, List<RelayState>> left(CircuitState state, BitSet wanted) {
    Map<Integer, RelayState[]> left = new HashMap<>();
    wanted.stream().forEach(i -> left.put(i, new RelayState[samples()]));
    ParallelTasks.run(blocks.size(), i -> blocks.get(i).leave(state, wanted, left));
    Map<Integer, List<RelayState>> rows = new HashMap<>();
    left.forEach((caseNumber, row) -> rows.put(caseNumber, List.of(row)));
    return rows;
  }

  /** The keys of what a case has opened before the technician arrives, in one sample: fuses, breakers, switches. */
  public Set<String> opened(int caseNumber, int sample) {
    boolean[] blown = openedIn(caseNumber, sample);
    return IntStream.range(0, blown.length).filter(fuse -> blown[fuse])
        .mapToObj(fuse -> logic.remembered().stayingOpen().get(fuse)).collect(Collectors.toSet());
  }

  private boolean[] openedIn(int caseNumber, int sample) {
    int number = 0;
    while (sample >= blocks.get(number).first() + blocks.get(number).samples()) {
      number++;
    }
    return blocks.get(number).opened(caseNumber, sample - blocks.get(number).first());
  }
}
