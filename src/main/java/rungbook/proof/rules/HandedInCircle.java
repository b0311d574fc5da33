package rungbook.proof.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.handover.Journeys;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** What other trees take over comes to an end there, and not back to a tree that has had it. */
final class HandedInCircle implements ProofRule {

  static final Code HANDED_IN_CIRCLE = Code.of("handed-in-circle");

  @Override
  public List<Code> codes() {
    return List.of(HANDED_IN_CIRCLE);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    context.journeys().circles().forEach(circle -> inspect(circle, context, out));
  }

  private static void inspect(Journeys.Circle circle, ProofRuleContext context, Problems out) {
    List<String> faults = new ArrayList<>();
    int first = -1;
    for (int i = 0; i < circle.shares().length; i++) {
      if (Share.isReported(circle.shares()[i])) {
        faults.add(context.names().get(i) + " (" + ReportNumbers.percent(circle.shares()[i]) + ")");
        first = first < 0 ? i : first;
      }
    }
    if (first >= 0) {
      int shown = first;
      Optional<Witness.Path> path = context.witnesses().next() ? circle.path(shown) : Optional.empty();
      leaving(circle, context).findFirst().ifPresent(at -> out.add(Problem.at(HANDED_IN_CIRCLE, at.step().source(),
          at.way().span()).with("faults", String.join(", ", faults))
          .with("trees", String.join("` -> `", circle.trees())).shownBy(path)));
    }
  }

  private record Leaving(Step step, Way way) {}

  /** The ways on that lead to the circle, in the order of the text. */
  private static Stream<Leaving> leaving(Journeys.Circle circle, ProofRuleContext context) {
    return context.tree().steps().stream().flatMap(step -> step.ways().stream()
        .filter(way -> way.target().equals(circle.through())).map(way -> new Leaving(step, way)));
  }
}
