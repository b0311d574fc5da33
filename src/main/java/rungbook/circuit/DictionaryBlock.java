package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.KnownLevels;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.sequence.SteadyStateSearch.Start;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.NetworkSolver;

/** All cases of a dictionary on one block of its samples. One thread works on a block at a time. */
final class DictionaryBlock {

  private final CircuitModel model;
  private final int number;
  private final int first;
  private final List<CaseBatch> batches;
  private final List<FaultedParameters> cases;
  private final boolean[][][] blown;
  private final KnownLevels levels;
  private final KnownReadings readings = new KnownReadings();
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
    levels = new KnownLevels(model);
    this.batches = batches;
    this.cases = cases.stream().map(model::faulted).toList();
    boolean[] none = new boolean[model.logic().fuses().size()];
    blown = new boolean[cases.size()][samples()][];
    for (boolean[][] ofCase : blown) {
      Arrays.fill(ofCase, none);
    }
  }

  int first() {
    return first;
  }

  int samples() {
    return model.parameters().size();
  }

  /** The fuses that a case has blown before the technician arrives, in one sample of the block. */
  boolean[] blown(int caseNumber, int sample) {
    return blown[caseNumber][sample];
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
      int[] intact = IntStream.range(0, samples()).filter(sample -> !any(blown[i][sample])).toArray();
      if (intact.length > 0) {
        starts.add(new Start(i, cases.get(i), start.at(positions.get(i).state(number)), intact, blown[i][intact[0]]));
      }
    });
    if (!starts.isEmpty()) {
      search(batch, new BitSet(), starts, (one, steady, network) -> {
        if (any(steady.relays().blown)) {
          Arrays.stream(steady.samples()).forEach(sample -> blown[one.number()][sample] = steady.relays().blown);
        }
      });
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

  private static boolean any(boolean[] fuses) {
    for (boolean fuse : fuses) {
      if (fuse) {
        return true;
      }
    }
    return false;
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
      levels.forgetTooMany();
      readings.forgetTooMany();
    } finally {
      working.unlock();
    }
  }

  private void read(CaseBatch batch, List<EquipmentState> states, List<ReadingTable> tables, BitSet wanted) {
    var numbers = (BitSet) batch.cases().clone();
    numbers.and(wanted);
    var starts = new ArrayList<Start>();
    for (EquipmentState state : states) {
      numbers.stream().forEach(i -> starts.addAll(starts(i, state)));
    }
    if (!starts.isEmpty()) {
      var readout = new BlockReadout(model, readings, states, tables, number);
      search(batch, readout.nodes(), starts, readout);
      readout.readDirect(batch.structure());
    }
  }

  /** One group of samples for each set of fuses that a case has blown. */
  private List<Start> starts(int number, EquipmentState state) {
    var groups = new ArrayList<Start>();
    int[] left = IntStream.range(0, samples()).toArray();
    while (left.length > 0) {
      boolean[] open = blown[number][left[0]];
      int[] alike = Arrays.stream(left).filter(sample -> Arrays.equals(blown[number][sample], open)).toArray();
      groups.add(new Start(number, cases.get(number), state, alike, atStart(open, state.state())));
      left = Arrays.stream(left).filter(sample -> !Arrays.equals(blown[number][sample], open)).toArray();
    }
    return groups;
  }

  /** The fuses that are open when a state begins; a replaced fuse starts intact. */
  private boolean[] atStart(boolean[] before, CircuitState state) {
    boolean[] open = before.clone();
    for (int fuse = 0; fuse < open.length; fuse++) {
      open[fuse] &= !state.replaced().contains(model.logic().fuses().get(fuse).key());
    }
    return open;
  }
}
