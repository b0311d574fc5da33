package rungbook.proof.cases;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** How a case is left in the base of a system and in its variants, as one number. Thread-safe. */
public final class JoinedWays {

  private final Map<List<Integer>, Integer> numbers = new HashMap<>();

  /** How the cases of the base or a variant are left, by their own numbers. */
  @FunctionalInterface
  public interface Form {
    Map<Integer, Integer> left(int form, BitSet cases);
  }

  /** @param localCase of each form, by case; negative for one that it does not have */
  public Map<Integer, Integer> of(int[][] localCase, BitSet wanted, Form left) {
    List<Map<Integer, Integer>> byForm = IntStream.range(0, localCase.length).mapToObj(form -> {
      var own = new BitSet();
      wanted.stream().map(one -> localCase[form][one]).filter(one -> one >= 0).forEach(own::set);
      return left.left(form, own);
    }).toList();
    Map<Integer, Integer> joined = new HashMap<>();
    wanted.stream().forEach(one -> joined.put(one, number(IntStream.range(0, localCase.length)
        .mapToObj(form -> byForm.get(form).getOrDefault(localCase[form][one], 0)).toList())));
    return joined;
  }

  private synchronized int number(List<Integer> ways) {
    return ways.stream().allMatch(way -> way == 0) ? 0
        : numbers.computeIfAbsent(ways, any -> numbers.size() + 1);
  }
}
