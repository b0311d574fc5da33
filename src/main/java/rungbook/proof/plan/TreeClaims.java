package rungbook.proof.plan;

import java.util.List;
import java.util.stream.Stream;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * What a tree can find, whatever its limits are.
 *
 * @param faults keys of the faults that its findings name, in order
 * @param isHealthyFound whether some finding is that nothing is wrong
 * @param takingOver ids of the trees to which it hands on, in order
 */
public record TreeClaims(String title, List<String> faults, boolean isHealthyFound, List<String> takingOver) {

  public static TreeClaims of(Tree tree) {
    return new TreeClaims(tree.title(),
        findings(tree).flatMap(finding -> finding.faults().stream()).map(fault -> fault.key()).distinct().sorted()
            .toList(),
        findings(tree).anyMatch(Step.Finding::healthy),
        tree.steps().stream().flatMap(step -> step.ways().stream())
            .flatMap(way -> way.target() instanceof Target.ToTree to ? Stream.of(to.tree()) : Stream.empty()).distinct()
            .sorted().toList());
  }

  private static Stream<Step.Finding> findings(Tree tree) {
    return tree.steps().stream().filter(Step.Finding.class::isInstance).map(Step.Finding.class::cast);
  }
}
