package rungbook.proof.propagation;

import java.util.List;
import java.util.Map;

/**
 * Where faults end that come and go, and which findings are reached by good readings alone.
 *
 * @param ends of a fault that is gone from some check on, as sums over the checks on its way
 * @param checks by case, how many checks are on its way
 * @param excluded by finding and case, what arrives there by exclusion alone, as a share of the drawn samples
 */
public record IntermittentRun(List<ArrivalTable.Arrivals> ends, double[] checks, Map<Integer, double[]> excluded) {

  public IntermittentRun {
    ends = List.copyOf(ends);
    excluded = Map.copyOf(excluded);
  }
}
