package rungbook.circuit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.solver.NetworkStructure;

/** Cases that are solved in one structure, which has a slot for every pair of nodes that one of them joins. */
record CaseBatch(NetworkStructure structure, BitSet cases) {

  /**
   * Faults that join nodes far apart would fill the structure with slots that no other case uses; a batch may have this
   * many times the slots of the healthy system.
   */
  private static final double MOST_FILL = 1.5;

  /** Divides the cases into as few batches as that allows, in halves. */
  static List<CaseBatch> of(CircuitNetwork network, List<FaultCase> cases) {
    int healthySlots = NetworkStructure.of(network, List.of()).order().slotCount();
    var batches = new ArrayList<CaseBatch>();
    divide(network, cases, 0, cases.size(), (int) (MOST_FILL * healthySlots), batches);
    return List.copyOf(batches);
  }

  private static void divide(CircuitNetwork network, List<FaultCase> cases, int from, int to, int mostSlots,
      List<CaseBatch> batches) {
    NetworkStructure structure = NetworkStructure.of(network, cases.subList(from, to));
    if (to - from > 1 && structure.order().slotCount() > mostSlots) {
      int middle = (from + to) >>> 1;
      divide(network, cases, from, middle, mostSlots, batches);
      divide(network, cases, middle, to, mostSlots, batches);
      return;
    }
    var numbers = new BitSet();
    numbers.set(from, to);
    batches.add(new CaseBatch(structure, numbers));
  }
}
