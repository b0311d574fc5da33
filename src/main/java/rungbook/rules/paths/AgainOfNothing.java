package rungbook.rules.paths;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** A check that reads a point again comes after one that has read it. */
public final class AgainOfNothing implements Rule {

  static final Code AGAIN_OF_NOTHING = Code.of("again-of-nothing");

  @Override
  public List<Code> codes() {
    return List.of(AGAIN_OF_NOTHING);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    int[] agains = IntStream.range(0, steps.size())
        .filter(i -> steps.get(i) instanceof Step.Check check && check.isAgain()).toArray();
    for (int step : agains) {
      Step.Check check = (Step.Check) steps.get(step);
      if (IntStream.range(0, steps.size()).noneMatch(i -> i != step && asks(steps.get(i), check)
          && reached(steps, i).get(step))) {
        out.add(Problem.at(AGAIN_OF_NOTHING, check.source(),
            check.header().block().entry(Step.Check.AGAIN).orElseThrow().keySpan()));
      }
    }
  }

  /** Whether a step asks all that a check asks. */
  private static boolean asks(Step step, Step.Check check) {
    List<String> asked = Question.of(check);
    return step instanceof Step.Check before && !asked.isEmpty()
        && new HashSet<>(Question.of(before)).containsAll(Set.copyOf(asked));
  }

  private static BitSet reached(List<Step> steps, int first) {
    BitSet reached = new BitSet();
    Deque<Integer> waiting = new ArrayDeque<>(List.of(first));
    while (!waiting.isEmpty()) {
      for (Way way : steps.get(waiting.pop()).ways()) {
        if (way.target() instanceof Target.ToStep to && !reached.get(to.step())) {
          reached.set(to.step());
          waiting.push(to.step());
        }
      }
    }
    return reached;
  }
}
