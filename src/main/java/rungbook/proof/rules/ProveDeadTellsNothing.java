package rungbook.proof.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.action.EquipmentCondition;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.SituationPath;
import rungbook.proof.plan.StateText;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** What is proved dead would read live if the source were still on: a switch can fail closed. */
public final class ProveDeadTellsNothing implements ProofRule {

  public static final Code PROVE_DEAD_TELLS_NOTHING = Code.of("prove-dead-tells-nothing");

  /**
   * The least reading that says live where only control voltage is: far below 24 V, above most of what is stray. A
   * choice of this project, no source.
   */
  private static final double CONTROL_VOLTS = 10;

  /** States that are solved for one tree; further ones are not looked at. */
  private static final int MOST_STATES = 64;

  /** Points that are paired; more pairs than these have do not make a reading more likely. */
  private static final int MOST_POINTS = 30;

  @Override
  public List<Code> codes() {
    return List.of(PROVE_DEAD_TELLS_NOTHING);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    int solved = 0;
    for (Map.Entry<Integer, Set<Situation>> proof : context.deadProofs().entrySet()) {
      for (Situation situation : proof.getValue()) {
        if (++solved <= MOST_STATES && isBlind(proof.getKey(), situation, context, out)) {
          break;
        }
      }
    }
  }

  /** Whether the points read dead in a situation with every source on; reports it. */
  private static boolean isBlind(int number, Situation situation, ProofRuleContext context, Problems out) {
    Step step = context.step(number);
    CircuitState before = before(step, situation.state());
    List<Action> points = step.actions().stream().filter(ProveDeadTellsNothing::provesDead).toList();
    List<Probe> pairs = context.proofContext().probePlan()
        .pairs(points.stream().map(Action::key).distinct().limit(MOST_POINTS).toList(), situation.place());
    if (before.off().isEmpty() || pairs.isEmpty()) {
      return false;
    }
    CircuitState on = before.withPower();
    double most = highest(context.proofContext().installations(), on, pairs);
    double limit = hasLineVoltage(context, situation.place()) ? Vocabulary.LINE_VOLTS : CONTROL_VOLTS;
    if (most >= limit) {
      return false;
    }
    out.add(Problem.at(PROVE_DEAD_TELLS_NOTHING, step.source(), points.get(0).thing().span())
        .with("sources", before.off().stream().sorted().collect(Collectors.joining("`, `")))
        .with("most", BigDecimal.valueOf(most).setScale(1, RoundingMode.HALF_UP))
        .with("limit", ReportNumbers.number(BigDecimal.valueOf(limit)))
        .with("state", StateText.of(on, context.proofContext().start().state()))
        .shownBy(context.wayTo(number, situation)));
    return true;
  }

  private static boolean provesDead(Action action) {
    return action.kind().begins(EquipmentCondition.PROVED_DEAD);
  }

  private static CircuitState before(Step step, CircuitState state) {
    CircuitState before = state;
    for (Action action : step.actions()) {
      if (provesDead(action)) {
        return before;
      }
      before = before.after(action.changes());
    }
    return before;
  }

  /** The highest reading of all pairs, in the installation where it is lowest. */
  private static double highest(Installations installations, CircuitState state, List<Probe> pairs) {
    double[][] readings = installations.healthy(state, pairs);
    return IntStream.range(0, installations.samples())
        .mapToDouble(sample -> Math.max(0, highest(readings, sample).orElse(0))).min().orElse(0);
  }

  private static OptionalDouble highest(double[][] readings, int sample) {
    return Arrays.stream(readings).mapToDouble(pair -> pair[sample]).max();
  }

  private static boolean hasLineVoltage(ProofRuleContext context, String place) {
    return context.tree().system().orElseThrow().points().values().stream()
        .anyMatch(point -> point.locations().contains(place)
            && point.volts().orElse(0) >= Vocabulary.LINE_VOLTS);
  }
}
