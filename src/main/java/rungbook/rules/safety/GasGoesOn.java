package rungbook.rules.safety;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Answer;
import rungbook.tree.Step.Sense;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/**
 * After an answer that means a gas smell, the work continues instead of ending at a finding that evacuates the building
 * and calls for help. After a task that finds a leak without a smell, what follows may also refer, or warn of gas and
 * do no more than to switch off.
 */
public final class GasGoesOn implements Rule {

  static final Code GAS_GOES_ON = Code.of("gas-goes-on");

  private static final Pattern GAS_FOUND = Pattern
      .compile("^gas$|\\bgas (is|was) (still )?(there|left|found)|\\bgas leak");
  private static final Pattern GAS_SMELLED = Pattern.compile("smells? (like|of) gas");
  private static final Pattern DENIAL = Pattern.compile("\\b(no|not|without|nothing)\\b");

  @Override
  public List<Code> codes() {
    return List.of(GAS_GOES_ON);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    for (Step step : steps) {
      if (step instanceof Step.SenseCheck check && check.sense() == Sense.SMELL) {
        inspect(check, steps, out);
      } else if (step instanceof Step.Task) {
        step.ways().stream().filter(way -> goesOn(way, steps)).forEach(
            way -> out.add(Problem.at(GAS_GOES_ON, step.source(), way.span()).with("answer", way.written())));
      }
    }
  }

  private static boolean goesOn(Way way, List<Step> steps) {
    String answer = way.written().toLowerCase(Locale.ROOT);
    if (DENIAL.matcher(answer).find()) {
      return false;
    }
    return GAS_SMELLED.matcher(answer).find() ? !stops(way.target(), steps)
        : GAS_FOUND.matcher(answer).find() && !refers(way.target(), steps);
  }

  private static boolean refers(Target target, List<Step> steps) {
    return target instanceof Target.Nowhere
        || (target instanceof Target.ToStep to && isAboutGas(steps.get(to.step())));
  }

  /** A finding that refers, or a task that warns of gas and does no more than to switch off. */
  private static boolean isAboutGas(Step step) {
    return (step instanceof Step.Finding finding && finding.refer().isPresent())
        || (step instanceof Step.Task && step.header().cautions().stream().anyMatch(one -> isGas(one.key()))
            && step.actions().stream().allMatch(action -> action.kind().begins(EquipmentCondition.ISOLATED)));
  }

  private static void inspect(Step.SenseCheck check, List<Step> steps, Problems out) {
    for (int thing = 0; thing < check.things().size(); thing++) {
      if (isGas(check.things().get(thing).key())) {
        for (Way way : check.ways()) {
          if (mayMeanGas(way.answer(), thing) && !stops(way.target(), steps)) {
            out.add(Problem.at(GAS_GOES_ON, check.source(), way.span()).with("answer", way.written()));
          }
        }
      }
    }
  }

  private static boolean isGas(String thing) {
    return (" " + thing + " ").contains(" gas ");
  }

  /** Every answer but a plain no may mean a gas smell. */
  private static boolean mayMeanGas(Answer answer, int thing) {
    if (answer instanceof Answer.Words words && thing < words.words().size()) {
      String word = words.words().get(thing);
      return !word.equals("no") && !word.startsWith("no ") && !word.equals("none") && !word.equals("nothing");
    }
    return !(answer instanceof Answer.Unreadable);
  }

  private static boolean stops(Target target, List<Step> steps) {
    return target instanceof Target.Nowhere
        || (target instanceof Target.ToStep to && steps.get(to.step()) instanceof Step.Finding finding
            && finding.evacuate() && finding.refer().isPresent());
  }
}
