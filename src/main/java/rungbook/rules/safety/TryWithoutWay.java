package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Success;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * An isolation is tried, and no way on is for the case that something starts. Whoever sees it start takes the only way
 * there is, and opens equipment that is not off. A step that nothing follows is left to its own words.
 */
public final class TryWithoutWay implements Rule {

  static final Code TRY_WITHOUT_WAY = Code.of("try-without-way");

  @Override
  public List<Code> codes() {
    return List.of(TRY_WITHOUT_WAY);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (int number : context.state().order()) {
      Step step = context.state().step(number);
      if (!step.ways().isEmpty() && step.header().section().unread().isEmpty() && failing(step).findAny().isEmpty()) {
        step.actions().stream().filter(action -> action.kind().begins(EquipmentCondition.TRIED)).findFirst()
            .ifPresent(tried -> out.add(problem(tried, step, number, context)));
      }
    }
  }

  private static Problem problem(Action tried, Step step, int number, RuleContext context) {
    return Problem.at(TRY_WITHOUT_WAY, step.source(), tried.thing().span()).with("source", tried.thing().text())
        .fixedBy(failingProof(step, number, context).map(way -> asThere(way, step)));
  }

  /** The way on that says it failed, of the proof that follows at once. */
  private static Optional<Way> failingProof(Step step, int number, RuleContext context) {
    return IntStream.of(context.graph().targets(number)).filter(target -> target >= 0)
        .mapToObj(context.state()::step)
        .filter(next -> next.source().equals(step.source()) && next.actions().stream()
            .anyMatch(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD)))
        .flatMap(TryWithoutWay::failing).findFirst();
  }

  private static Stream<Way> failing(Step step) {
    return IntStream.range(0, step.ways().size())
        .filter(way -> !Success.isMeant(step.ways().get(way).written(), way)).mapToObj(step.ways()::get);
  }

  /** Leads on to where the proof leads if it fails. */
  private static Fix asThere(Way failing, Step step) {
    String target = step.source().text(new Span(failing.answerSpan().end(), failing.span().end()));
    int end = step.ways().get(step.ways().size() - 1).span().end();
    return new Fix("add `something starts`",
        List.of(new Edit(step.source(), Span.at(end), "\n- something starts" + target)));
  }
}
