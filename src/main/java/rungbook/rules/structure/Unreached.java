package rungbook.rules.structure;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Graph;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * Steps that no path reaches. Reports only the first step of an unreached part, since the rest is reached through it.
 * Reports nothing while a link is broken, because it may be meant to lead here.
 */
public final class Unreached implements Rule {

  static final Code NOTHING_LEADS_HERE = Code.of("nothing-leads-here");
  static final Code STEP_UNREACHED = Code.of("step-unreached");

  @Override
  public List<Code> codes() {
    return List.of(NOTHING_LEADS_HERE, STEP_UNREACHED);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    Graph graph = context.graph();
    if (graph.isWhole() && hasAllItsSteps(context.tree())) {
      boolean[] explained = new boolean[graph.size()];
      reportStarts(context, explained, out);
      reportIslands(context, explained, out);
    }
  }

  /** Whether no heading was dropped, for its name or a misspelled word after its fence: its ways on would count. */
  @SuppressWarnings("ReferenceEquality") // a file is read once, and comparing by value would compare whole texts
  private static boolean hasAllItsSteps(Tree tree) {
    return tree.document().misspelled().isEmpty()
        && tree.document().sections().stream().filter(section -> section.isStep()).count() == tree.steps().stream()
            .filter(step -> step.header().document() == tree.document()).count();
  }

  /** Reports steps, other than the first, that no way leads to. */
  private static void reportStarts(RuleContext context, boolean[] explained, Problems out) {
    Graph graph = context.graph();
    for (int step = 1; step < graph.size(); step++) {
      if (graph.arrivals(step) == 0) {
        report(NOTHING_LEADS_HERE, context.tree().steps().get(step), out);
        graph.mark(step, explained);
      }
    }
  }

  /** Reports the rest, which is reached only from itself: cycles of steps and their successors. */
  private static void reportIslands(RuleContext context, boolean[] explained, Problems out) {
    Graph graph = context.graph();
    for (int step = 0; step < graph.size(); step++) {
      if (!graph.isReached(step) && !explained[step]) {
        report(STEP_UNREACHED, context.tree().steps().get(step), out);
        graph.mark(step, explained);
      }
    }
  }

  private static void report(Code code, Step step, Problems out) {
    out.add(Problem.at(code, step.source(), step.header().titleSpan()).with("step", step.title()).with("slug",
        step.header().section().slug()));
  }
}
