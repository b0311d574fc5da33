package rungbook.rules.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.action.ActionKind;
import rungbook.action.EquipmentCondition;
import rungbook.markdown.Entry;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A circuit is proved dead although, on some path, a source of that place was isolated and nobody has tried to start
 * what it feeds: 29 CFR 1910.333(b)(2)(iv)(A), from memory. Where the place was found still live, the proof comes after
 * one more source is off, and nobody calls for a start in front of open, live parts.
 */
public final class IsolationNotTried extends DeadProofRule {

  static final Code ISOLATION_NOT_TRIED = Code.of("isolation-not-tried");

  @Override
  public List<Code> codes() {
    return List.of(ISOLATION_NOT_TRIED);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().any(Fact.TRIED);
  }

  @Override
  protected void inspect(Action proof, Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    List<Integer> untried = untried(step, context, point);
    if (!untried.isEmpty() && !point.must(StillLiveUsed.stillLive(step, context.state().facts()))) {
      List<String> sources = untried.stream().map(context.state().facts()::words).toList();
      Optional<Fix> fix = sources.size() > 1 ? Optional.empty() : fix(sources.get(0), context.tree().steps());
      out.add(Problem.at(ISOLATION_NOT_TRIED, step.source(), proof.thing().span())
          .with("sources", String.join("`, `", sources)).with("line", String.join(", ", sources)).fixedBy(fix)
          .shownBy(point.showLacking(untried.get(0), "")));
    }
  }

  /** The sources of the step's place that, on some path, are off and not tried, as facts. */
  private static List<Integer> untried(Step step, RuleContext context, PathFacts.ProgramPoint point) {
    List<Integer> untried = new ArrayList<>();
    int next = point.nextLacking(Fact.TRIED, 0);
    while (next != FactTable.NONE) {
      if (context.tree().hazards().feeds(context.state().facts().words(next), FactTable.place(step))) {
        untried.add(next);
      }
      next = point.nextLacking(Fact.TRIED, next + 1);
    }
    return untried;
  }

  /** Tries the source right after it is isolated, where one step alone does that. */
  private static Optional<Fix> fix(String source, List<Step> steps) {
    List<Step> isolating = steps.stream().filter(step -> isolates(step, source)).toList();
    return isolating.size() != 1 ? Optional.empty() : tryAfterIsolating(isolating.get(0), source);
  }

  private static boolean isolates(Step step, String source) {
    return step.actions().stream().anyMatch(
        action -> action.key().equals(source) && action.kind().begins(EquipmentCondition.ISOLATED));
  }

  private static Optional<Fix> tryAfterIsolating(Step step, String source) {
    String key = ActionKind.beginning(EquipmentCondition.TRIED).words();
    Optional<Entry> line = step.header().block()
        .entry(ActionKind.beginning(EquipmentCondition.ISOLATED).words());
    return line.filter(entry -> step.header().block().entry(key).isEmpty())
        .map(entry -> new Fix("add `" + key + ": " + source + "`",
            List.of(new Edit(step.source(), Span.at(entry.valueSpan().end()), "\n" + key + ": " + source))));
  }
}
