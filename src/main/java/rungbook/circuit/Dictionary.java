package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.RelayLogic;
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
    int count = (samples.size() + BLOCK - 1) / BLOCK;
    DictionaryBlock[] made = new DictionaryBlock[count];
    ParallelTasks.run(count, i -> {
      made[i] = block(i, count, batches);
      made[i].findBlown(equipment, positions);
    });
    blocks = List.of(made);
  }

  /** Blocks of nearly the same size. */
  private DictionaryBlock block(int number, int count, List<CaseBatch> batches) {
    int first = number * samples.size() / count;
    int next = (number + 1) * samples.size() / count;
    var model = new CircuitModel(network, logic, new Samples(samples.draws().subList(first, next)));
    return new DictionaryBlock(model, first, batches, cases);
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
    together.forEach(faults -> cases.add(faults.stream().map(fault -> FaultCase.of(fault, network))
        .reduce(FaultCase::and).orElseThrow()));
    return new Dictionary(network, samples, List.copyOf(cases));
  }

  public CircuitNetwork network() {
    return network;
  }

  public int samples() {
    return samples.size();
  }

  /** The key of each case: {@code healthy}, then the faults in their order. */
  public List<String> cases() {
    return cases.stream().map(FaultCase::name).toList();
  }

  FaultCase fault(int caseNumber) {
    return cases.get(caseNumber);
  }

  /** Solves one circuit state for every case and sample. */
  public ReadingTable table(CircuitState state, List<Probe> probes) {
    return tables(Map.of(state, probes)).values().iterator().next();
  }

  /**
   * Solves several circuit states together, which costs less than one after the other, since many have networks in
   * common.
   *
   * @param probes to read in each state
   */
  public Map<CircuitState, ReadingTable> tables(Map<CircuitState, List<Probe>> probes) {
    var all = new BitSet();
    all.set(0, cases.size());
    return tables(probes, all);
  }

  /** Solves one circuit state for the healthy system; the other cases' rows of the table hold no readings. */
  public ReadingTable healthy(CircuitState state, List<Probe> probes) {
    var healthy = new BitSet();
    healthy.set(0);
    return table(state, probes, healthy);
  }

  /** Solves one circuit state for some cases; the other cases' rows of the table hold no readings. */
  ReadingTable table(CircuitState state, List<Probe> probes, BitSet wanted) {
    return tables(Map.of(state, probes), wanted).values().iterator().next();
  }

  private Map<CircuitState, ReadingTable> tables(Map<CircuitState, List<Probe>> probes, BitSet wanted) {
    var tables = new LinkedHashMap<CircuitState, ReadingTable>();
    probes.forEach((state, list) -> tables.put(state, new ReadingTable(list, logic.sights(), cases.size(), samples())));
    List<EquipmentState> states = tables.keySet().stream().map(state -> EquipmentState.of(network, state)).toList();
    List<ReadingTable> inOrder = List.copyOf(tables.values());
    ParallelTasks.run(blocks.size(), i -> blocks.get(i).read(states, inOrder, wanted));
    return tables;
  }

  /** The keys of the fuses and breakers that a case has opened before the technician arrives, in one sample. */
  public Set<String> opened(int caseNumber, int sample) {
    boolean[] blown = blown(caseNumber, sample);
    return IntStream.range(0, blown.length).filter(fuse -> blown[fuse])
        .mapToObj(fuse -> logic.fuses().get(fuse).key()).collect(Collectors.toSet());
  }

  private boolean[] blown(int caseNumber, int sample) {
    int number = 0;
    while (sample >= blocks.get(number).first() + blocks.get(number).samples()) {
      number++;
    }
    return blocks.get(number).blown(caseNumber, sample - blocks.get(number).first());
  }
}
