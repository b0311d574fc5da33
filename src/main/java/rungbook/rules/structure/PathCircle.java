package rungbook.rules.structure;

import java.util.ArrayList;
import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Graph;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** A cycle of ways on. Cycles that share a step with a reported one are reported after that is fixed. */
public final class PathCircle implements Rule {

  static final Code PATH_CIRCLE = Code.of("path-circle");

  @Override
  public List<Code> codes() {
    return List.of(PATH_CIRCLE);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    if (context.graph().size() > 0) {
      new Walk(context, out).walk();
    }
  }

  /** A depth-first search with an explicit stack, so long trees cause no deep recursion. */
  private static final class Walk {

    private static final int NEW = 0;
    private static final int ON_STACK = 1;
    private static final int DONE = 2;

    private final RuleContext context;
    private final Graph graph;
    private final Problems out;
    private final int[] stack;
    /** By step: the next way to walk; the current way is one less. */
    private final int[] nextWay;
    private final int[] state;
    private final boolean[] reported;
    private int depth;

    Walk(RuleContext context, Problems out) {
      this.context = context;
      this.graph = context.graph();
      this.out = out;
      stack = new int[graph.size()];
      nextWay = new int[graph.size()];
      state = new int[graph.size()];
      reported = new boolean[graph.size()];
    }

    void walk() {
      push(0);
      while (depth > 0) {
        int step = stack[depth - 1];
        int[] targets = graph.targets(step);
        if (nextWay[step] == targets.length) {
          state[step] = DONE;
          depth--;
        } else {
          follow(step, targets[nextWay[step]++]);
        }
      }
    }

    private void follow(int step, int target) {
      if (target < 0 || state[target] == DONE) {
        return;
      }
      if (state[target] == NEW) {
        push(target);
      } else if (!reported[step] && !reported[target]) {
        report(target);
      }
    }

    private void push(int step) {
      state[step] = ON_STACK;
      stack[depth++] = step;
    }

    private void report(int first) {
      var stops = new ArrayList<Witness.Stop>();
      int from = depth - 1;
      while (stack[from] != first) {
        from--;
      }
      for (int i = from; i < depth; i++) {
        reported[stack[i]] = true;
        stops.add(stop(stack[i]));
      }
      Step again = step(first);
      stops.add(new Witness.Stop(again.title(), again.source(), again.header().titleSpan(), ""));
      Witness.Stop closing = closing(stops.subList(0, stops.size() - 1));
      out.add(Problem.at(PATH_CIRCLE, closing.source(), closing.span()).with("step", again.title())
          .with("circle", circle(stops)).shownBy(new Witness.Path(stops)));
    }

    private Witness.Stop stop(int index) {
      Step step = step(index);
      Way way = step.ways().get(nextWay[index] - 1);
      return new Witness.Stop(step.title(), step.source(), way.span(), way.written());
    }

    /** The last way of the cycle in the tree's own text, else the last one: the fragment itself may be right. */
    private Witness.Stop closing(List<Witness.Stop> ring) {
      Source own = context.tree().source();
      for (int i = ring.size() - 1; i >= 0; i--) {
        if (ring.get(i).source() == own) {
          return ring.get(i);
        }
      }
      return ring.get(ring.size() - 1);
    }

    /** Names at most four steps; the witness has all of them. */
    private static String circle(List<Witness.Stop> stops) {
      var words = new StringBuilder();
      for (int i = 0; i < stops.size(); i++) {
        boolean named = stops.size() <= 5 || i < 2 || i >= stops.size() - 2;
        if (named) {
          words.append(i == 0 ? "" : " → ").append('`').append(stops.get(i).step()).append('`');
        } else if (i == 2) {
          words.append(" → …");
        }
      }
      return words.toString();
    }

    private Step step(int index) {
      return context.tree().steps().get(index);
    }
  }
}
