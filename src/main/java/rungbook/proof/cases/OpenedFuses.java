package rungbook.proof.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Which fuses and breakers each case has opened before the technician arrives.
 *
 * @param sets their keys, each set once
 * @param numbers of the sets, by case, then by sample
 */
public record OpenedFuses(List<Set<String>> sets, int[][] numbers) {

  /** @param opened by case, then by sample */
  public static OpenedFuses of(int cases, int samples, IntFunction<IntFunction<Set<String>>> opened) {
    var sets = new ArrayList<Set<String>>();
    Map<Set<String>, Integer> numbers = new HashMap<>();
    int[][] byCase = IntStream.range(0, cases)
        .mapToObj(one -> IntStream.range(0, samples).map(sample -> numbers
            .computeIfAbsent(opened.apply(one).apply(sample), set -> {
              sets.add(set);
              return sets.size() - 1;
            })).toArray())
        .toArray(int[][]::new);
    return new OpenedFuses(List.copyOf(sets), byCase);
  }

  public Set<String> of(int caseNumber, int sample) {
    return sets.get(numbers[caseNumber][sample]);
  }
}
