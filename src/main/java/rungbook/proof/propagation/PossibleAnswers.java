package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rungbook.circuit.Probe;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Which answers a case may give at a step, one installation at a time. */
public final class PossibleAnswers {

  /** Often one of the first cases gives an answer; together they cost less than one by one. */
  private static final int FIRST_ASKED = 8;

  private final Tree tree;
  private final ProofContext context;
  private final Map<Integer, CheckTally> tallies;
  private final Map<Integer, CheckTally> elsewhere = new HashMap<>();
  private final ObservedStates observed;
  private final ReachableFaults reachable;

  /** @param tallies by step, of every check with a meter that was reached and is modeled */
  PossibleAnswers(Tree tree, ProofContext context, Map<Integer, CheckTally> tallies, ObservedStates observed,
      ReachableFaults reachable) {
    this.tree = tree;
    this.context = context;
    this.tallies = tallies;
    this.observed = observed;
    this.reachable = reachable;
  }

  ReachableFaults reachable() {
    return reachable;
  }

  ObservedStates observed() {
    return observed;
  }

  /** The situation in which a case is once a step's actions are done. */
  Situation after(Situation situation, int step, int caseNumber) {
    return context.memory().after(situation, tree.steps().get(step), caseNumber);
  }

  /** @param answer as written, with the reading if there was one */
  record Given(int way, String answer) {}

  /** The answers that one installation may give. */
  List<Given> of(int step, Situation situation, int caseNumber, int sample) {
    Step asked = tree.steps().get(step);
    if (asked instanceof Step.MeterCheck check) {
      Optional<Probe> probe = context.probePlan().probe(check, situation.place());
      return probe.isEmpty() || tree.meter().scale(check.quantity()).isEmpty()
          ? given(check, open(check, caseNumber), "")
          : measured(tally(step), readings(probe.get(), situation, caseNumber)[sample]);
    }
    if (asked instanceof Step.SenseCheck check) {
      boolean[] ways = senses(check, situation, caseNumber).ways(sample);
      return given(check, way -> ways[way], "");
    }
    if (asked instanceof Step.Finding) {
      return List.of(); // what follows is the repair
    }
    return given(asked, way -> way == 0, ""); // a task is done as it says: its first way on
  }

  /** The answers of the healthy system in an installation that answers otherwise in another situation. */
  public record Changed(String before, String after) {}

  /** What a healthy system answers in two situations, if enough of the installations change their answer. */
  public Optional<Changed> changed(int step, Situation before, Situation after) {
    int drawn = context.installations().drawn();
    List<Changed> all = IntStream.range(0, drawn)
        .filter(sample -> !ways(step, before, sample).equals(ways(step, after, sample)))
        .mapToObj(sample -> new Changed(written(step, before, sample), written(step, after, sample))).toList();
    return all.stream().findFirst().filter(any -> Share.isReported((double) all.size() / drawn));
  }

  private List<Integer> ways(int step, Situation situation, int sample) {
    return of(step, situation, 0, sample).stream().map(Given::way).toList();
  }

  private String written(int step, Situation situation, int sample) {
    return of(step, situation, 0, sample).stream().map(Given::answer).findFirst().orElse("no answer");
  }

  private IntPredicate open(Step step, int caseNumber) {
    boolean[] open = reachable.openWays(step, caseNumber);
    return way -> open[way];
  }

  private static List<Given> measured(CheckTally tally, double reading) {
    String shown = ReportNumbers.reading(reading, tally.readings().digit(), tally.check().quantity());
    return given(tally.check(), way -> tally.split().mayTake(reading, way), " (reads " + shown + ")");
  }

  private static List<Given> given(Step step, IntPredicate isPossible, String reading) {
    return IntStream.range(0, step.ways().size()).filter(isPossible)
        .mapToObj(way -> new Given(way, step.ways().get(way).written() + reading)).toList();
  }

  /** Whether any case would give an answer to a modeled check in some installation, if it came there. */
  public boolean isPossible(int step, int way, Situation situation) {
    int count = context.installations().cases().size();
    int asked = FIRST_ASKED;
    for (int from = 0; from < count; from += asked, asked *= 2) {
      int till = Math.min(count, from + asked);
      var together = new BitSet();
      together.set(from, till);
      observed.in(situation.state()).expect(together);
      if (IntStream.range(from, till).anyMatch(one -> isPossible(step, way, situation, one))) {
        return true;
      }
    }
    return false;
  }

  private boolean isPossible(int step, int way, Situation situation, int caseNumber) {
    if (tree.steps().get(step) instanceof Step.SenseCheck check) {
      SenseSplit senses = senses(check, situation, caseNumber);
      return IntStream.range(0, context.installations().samples()).anyMatch(sample -> senses.ways(sample)[way]);
    }
    CheckTally tally = tally(step);
    Probe probe = context.probePlan().probe(tally.check(), situation.place()).orElseThrow();
    return Arrays.stream(readings(probe, situation, caseNumber))
        .anyMatch(reading -> tally.split().mayTake(reading, way));
  }

  /** A fault that is gone can bring somebody to a check that no case reaches otherwise. */
  private CheckTally tally(int step) {
    CheckTally tally = tallies.get(step);
    return tally != null ? tally : elsewhere.computeIfAbsent(step, any -> {
      Step.MeterCheck check = (Step.MeterCheck) tree.steps().get(step);
      return new CheckTally(step, check, tree.meter().scale(check.quantity()).orElseThrow(), context.installations(),
          reachable.byWay(check));
    });
  }

  private double[] readings(Probe probe, Situation situation, int caseNumber) {
    double[] readings = new double[context.installations().samples()];
    observed.in(situation.state()).readings(caseNumber, probe, readings);
    return readings;
  }

  private SenseSplit senses(Step.SenseCheck check, Situation situation, int caseNumber) {
    SenseSplit split = new SenseSplit(context.installations(), check, reachable.openWays(check, caseNumber));
    if (context.probePlan().shows(check)) {
      split.look(observed.in(situation.state()), caseNumber);
    }
    return split;
  }
}
