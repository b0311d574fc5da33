package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.FlowGraph;
import rungbook.tree.Action;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/**
 * The answers that are still possible when a check asks its question. They are a set of bits: all answers at the start
 * and after any change to the circuit, fewer after each answer of a check. Only questions asked at two or more steps
 * are tracked. Questions share words of 64 bits; each word is one dataflow problem.
 */
final class AvailableAnswers {

  private final RuleContext context;
  private final FlowGraph graph;
  private final Map<String, List<Asking>> questions = new LinkedHashMap<>();
  private final Map<Integer, List<Asking>> byStep = new HashMap<>();
  private final List<Asking> word = new ArrayList<>();
  private int bits;

  private AvailableAnswers(RuleContext context) {
    this.context = context;
    this.graph = context.state().graph();
  }

  /** One question asked at one step, and, once solved, what is known about its answer there. */
  static final class Asking {
    final int step;
    final int thing;
    final String question;
    private long[] taken = {};
    private int shift;
    private long all;
    @SuppressWarnings("NullAway.Init") // set once all questions are numbered, before anybody asks
    private DataflowSolver flow;

    private Asking(int step, int thing, String question) {
      this.step = step;
      this.thing = thing;
      this.question = question;
    }

    /** Whether any answer takes this way at all. */
    boolean canLead(int way) {
      return taken[way] != 0;
    }

    /** Whether an answer that is still possible on some path takes this way. */
    boolean mayLead(int way) {
      return (taken[way] << shift & possible()) != 0;
    }

    /** Whether any answer is still possible. */
    boolean isOpen() {
      return possible() != 0;
    }

    /** Whether some answer is ruled out on every path. */
    boolean isNarrowed() {
      return possible() != all;
    }

    private long possible() {
      return flow.at(step) & all;
    }

    /** Whether every path has already asked this question, with no change since. */
    boolean isRepeated() {
      return (flow.at(step) & fresh()) == 0;
    }

    private long fresh() {
      return Long.highestOneBit(all) << 1;
    }

    /** A path to this step on which one of the possible answers is not ruled out. */
    int[] path() {
      return flow.pathTo(step, Long.lowestOneBit(possible()));
    }
  }

  /** By step: its questions that another step asks too. Leaves out steps with no such question. */
  static Map<Integer, List<Asking>> of(RuleContext context) {
    AvailableAnswers known = new AvailableAnswers(context);
    known.gather();
    known.questions.values().forEach(known::follow);
    known.solveWord();
    return known.byStep;
  }

  private void gather() {
    Map<String, Asking> once = new HashMap<>();
    for (int step : graph.order()) {
      if (context.tree().steps().get(step) instanceof Step.Check check) {
        List<String> asked = Question.of(check);
        for (int thing = 0; thing < asked.size(); thing++) {
          gather(new Asking(step, thing, asked.get(thing)), once);
        }
      }
    }
  }

  private void gather(Asking asking, Map<String, Asking> once) {
    Asking first = once.putIfAbsent(asking.question, asking);
    if (first != null && first.step != asking.step) {
      questions.computeIfAbsent(asking.question, question -> new ArrayList<>(List.of(first))).add(asking);
    }
  }

  private void follow(List<Asking> askings) {
    Optional<Domain> domain = domain(askings).filter(Domain::canBeFollowed);
    if (domain.isEmpty()) {
      return;
    }
    int needed = domain.get().size() + 1;
    if (bits + needed > 64) {
      solveWord();
    }
    for (int i = 0; i < askings.size(); i++) {
      Asking asking = askings.get(i);
      asking.taken = domain.get().taken().get(i);
      asking.shift = bits;
      asking.all = domain.get().all() << bits;
      word.add(asking);
      byStep.computeIfAbsent(asking.step, step -> new ArrayList<>(1)).add(asking);
    }
    bits += needed;
  }

  private Optional<Domain> domain(List<Asking> askings) {
    List<Step> steps = context.tree().steps();
    if (!(steps.get(askings.get(0).step) instanceof Step.MeterCheck)) {
      return Optional.of(WordDomain
          .of(askings.stream().map(a -> new WordDomain.Asked((Step.Check) steps.get(a.step), a.thing)).toList()));
    }
    List<Step.MeterCheck> checks = askings.stream().map(asking -> (Step.MeterCheck) steps.get(asking.step)).toList();
    List<Readings> readings = askings.stream().flatMap(asking -> context.readings().get(asking.step).stream()).toList();
    return readings.size() == checks.size() ? Optional.of(ReadingDomain.of(checks, readings)) : Optional.empty();
  }

  private void solveWord() {
    if (word.isEmpty()) {
      return;
    }
    long[] gen = new long[graph.size()];
    long[] kill = new long[graph.size()];
    long[] wayKill = new long[graph.ways()];
    for (int step : graph.order()) {
      gen[step] = forgets(context.tree().steps().get(step)) ? -1L : 0;
    }
    for (Asking asking : word) {
      kill[asking.step] |= asking.fresh();
      for (int way = 0; way < asking.taken.length; way++) {
        wayKill[graph.firstWay(asking.step) + way] |= asking.all & ~(asking.taken[way] << asking.shift);
      }
    }
    DataflowSolver flow = DataflowSolver.solve(graph, -1L, gen, kill, null, wayKill);
    word.forEach(asking -> asking.flow = flow);
    word.clear();
    bits = 0;
  }

  /** Whether a step can change the answers, or expects that they have changed by themselves. */
  private static boolean forgets(Step step) {
    for (Action action : step.actions()) {
      if (action.kind().changesReadings()) {
        return true;
      }
    }
    return isProseAlone(step) || (step instanceof Step.Check check && check.isAgain());
  }

  /** Whether a step is a task that only its prose describes, so it may change anything. */
  static boolean isProseAlone(Step step) {
    return step instanceof Step.Task task && task.actions().isEmpty() && task.header().block().kind().equals("task");
  }
}
