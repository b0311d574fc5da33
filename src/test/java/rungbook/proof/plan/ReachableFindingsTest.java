package rungbook.proof.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.proof.MadeUp;
import rungbook.tree.Tree;

class ReachableFindingsTest {

  private static final List<List<String>> CASES = List.of(List.of(), List.of("lamp dead"), List.of("wire weak"));

  private static Tree tree(String id, String next, String fault) {
    return MadeUp.tree(id,
        "## Look\n\n```check\nlook: glow\nat: hall\n```\n\n- bright: [next](" + next + ".md)\n- dim: [next](" + next
            + ".md)\n- dark: [Fault](#fault)\n\n## Fault\n\n```finding\nfault: " + fault + "\n```\n");
  }

  private static BitSet any(String first, Map<String, Tree> trees) {
    var findings = new ReachableFindings(CASES, id -> Optional.ofNullable(trees.get(id)));
    return findings.of(trees.get(first).steps(), new int[] {0, 1}).any()[0];
  }

  @Test
  void treesThatLeadToEachOtherSeveralTimesReachTheFindingsOfBoth() {
    Map<String, Tree> trees = Map.of("one", tree("one", "other", "lamp dead"), "other",
        tree("other", "one", "wire weak"));
    assertEquals(BitSet.valueOf(new long[] {0b110}), any("one", trees));
    assertEquals(BitSet.valueOf(new long[] {0b110}), any("other", trees));
  }

  @Test
  void treeThatIsNotAtHandMayNameAnything() {
    assertEquals(BitSet.valueOf(new long[] {0b111}), any("one", Map.of("one", tree("one", "other", "lamp dead"))));
  }
}
