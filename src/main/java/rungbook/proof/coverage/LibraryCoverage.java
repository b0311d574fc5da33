package rungbook.proof.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the trees of a library find, system by system. */
public final class LibraryCoverage {

  private LibraryCoverage() {}

  /** @param trees of one library that were proved, in its order */
  public static List<SystemCoverage> of(List<TreeFindings> trees) {
    Map<String, List<TreeFindings>> bySystem = new LinkedHashMap<>();
    trees.forEach(tree -> bySystem.computeIfAbsent(tree.system(), any -> new ArrayList<>()).add(tree));
    return bySystem.entrySet().stream().map(one -> SystemCoverage.of(one.getKey(), one.getValue())).toList();
  }
}
