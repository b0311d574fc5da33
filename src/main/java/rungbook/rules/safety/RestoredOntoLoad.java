package rungbook.rules.safety;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.JointRule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.Success;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Role;
import rungbook.system.logic.SettledContacts;
import rungbook.tree.Action;
import rungbook.tree.Setting;
import rungbook.tree.Step;

/**
 * A power switch that is no pull-out is switched on while, on some path, a motor or heater that it feeds is called on.
 * What runs without a call does not count, nor does a start for a test: what follows is a check that names the call.
 * {@link SwitchedUnderLoad} reports pull-outs.
 */
public final class RestoredOntoLoad extends JointRule {

  static final Code RESTORED_ONTO_LOAD = Code.of("restored-onto-load");

  @Override
  public List<Code> codes() {
    return List.of(RESTORED_ONTO_LOAD);
  }

  @Override
  protected boolean concerns(Action action, RuleContext context) {
    Control control = context.tree().circuit().orElseThrow().vocabulary().controls().get(action.key());
    return control != null && control.role() == Role.ISOLATOR && !control.isPullOut()
        && action.kind().ends(EquipmentCondition.ISOLATED);
  }

  @Override
  protected Optional<Problem> inspect(Action action, Step step, RuleContext context, BitSet before) {
    BitSet on = withSourceOn(action, context, before);
    List<SettledContacts> settled = context.state().joint().settle(on);
    List<SettledContacts> withNoCall = context.state().joint().settleWithNoCall(on);
    return IntStream.range(0, settled.size()).boxed()
        .flatMap(one -> calledOn(action.key(), settled.get(one), withNoCall.get(one)))
        .filter(load -> !startsTests(action.key(), step, context)).findFirst()
        .map(load -> Problem.at(RESTORED_ONTO_LOAD, step.source(), action.thing().span()).with("load", load)
            .with("switch", action.thing().text()));
  }

  private static Stream<String> calledOn(String source, SettledContacts settled, SettledContacts withNoCall) {
    List<String> fed = settled.fedThrough(source);
    if (fed.isEmpty()) {
      return Stream.empty();
    }
    List<String> always = withNoCall.fedThrough(source);
    return fed.stream().filter(load -> !always.contains(load));
  }

  /**
   * Whether each way on leads, past steps without actions, to a check that names a call. If the step also proves dead
   * or tries, an answer that this failed is no way on from the restored source. Nor is one that leads to switching it
   * off again, or that sends everybody out.
   */
  private static boolean startsTests(String source, Step step, RuleContext context) {
    boolean canFail = step.actions().stream().anyMatch(action -> action.kind().needsSuccess());
    int[] targets = context.graph().targets(context.tree().steps().indexOf(step));
    int[] onward = IntStream.range(0, targets.length)
        .filter(way -> !canFail || Success.isMeant(step.ways().get(way).written(), way)).map(way -> targets[way])
        .filter(target -> target < 0 || !stops(context.tree().steps().get(target), source)).toArray();
    return leadToTests(onward, context);
  }

  private static boolean stops(Step step, String source) {
    return (step instanceof Step.Finding finding && finding.evacuate()) || step.actions().stream().anyMatch(
        action -> action.key().equals(source) && action.kind().begins(EquipmentCondition.ISOLATED));
  }

  private static boolean leadToTests(int[] targets, RuleContext context) {
    BitSet passed = new BitSet();
    Deque<int[]> open = new ArrayDeque<>(List.of(targets));
    boolean tests = true;
    while (tests && !open.isEmpty()) {
      int[] next = open.pop();
      tests = next.length > 0 && IntStream.of(next).allMatch(step -> step >= 0 && leadsOnToTest(step, context));
      IntStream.of(next).filter(step -> step >= 0 && isPassed(step, context) && !passed.get(step)).forEach(step -> {
        passed.set(step);
        open.push(context.graph().targets(step));
      });
    }
    return tests;
  }

  private static boolean leadsOnToTest(int step, RuleContext context) {
    return isPassed(step, context) || (context.tree().steps().get(step) instanceof Step.Check check
        && check.presumed().stream().anyMatch(setting -> isCall(setting, context)));
  }

  private static boolean isPassed(int step, RuleContext context) {
    return context.tree().steps().get(step) instanceof Step.Task task && task.actions().isEmpty();
  }

  /** A control at any position but its first, at which it starts. */
  private static boolean isCall(Setting setting, RuleContext context) {
    int fact = context.state().facts().at(setting);
    return fact != FactTable.NONE && !context.state().facts().isStart(fact);
  }
}
