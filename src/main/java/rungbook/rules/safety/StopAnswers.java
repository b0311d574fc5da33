package rungbook.rules.safety;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.action.ActionObject;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;
import rungbook.tree.WorkKind;

/**
 * Answers of a task that tell somebody to stop, by their words: something starts that should be off, somebody else has
 * locked it, or the license for the work is not here. What follows has to keep to it. After a try or a proof,
 * {@link StillLiveUsed} does that.
 */
public final class StopAnswers implements Rule {

  static final Code LICENSE_GOES_ON = Code.of("license-goes-on");
  static final Code LOCK_GOES_ON = Code.of("lock-goes-on");
  static final Code START_GOES_ON = Code.of("start-goes-on");

  private static final Pattern LACKING_LICENSE = Pattern.compile("\\bno\\b.*\\blicense");
  private static final List<String> STARTS = List.of("starts", "keeps running", "stays on", "still on", "still runs",
      "trips");
  private static final List<String> NOTHING = List.of("nothing", "no ", "not ", "all is off");

  @Override
  public List<Code> codes() {
    return List.of(LICENSE_GOES_ON, LOCK_GOES_ON, START_GOES_ON);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (int number : context.state().order()) {
      if (context.state().step(number) instanceof Step.Task task) {
        task.ways().forEach(way -> ignored(way, task, context)
            .ifPresent(code -> out.add(Problem.at(code, task.source(), way.span()).with("answer", way.written()))));
      }
    }
  }

  private static Optional<Code> ignored(Way way, Step.Task task, RuleContext context) {
    String answer = way.written().toLowerCase(Locale.ROOT);
    if (answer.contains("somebody else")) {
      return reaches(way, step -> switchesOn(step, context), context) ? Optional.of(LOCK_GOES_ON) : Optional.empty();
    }
    if (LACKING_LICENSE.matcher(answer).find()) {
      return reaches(way, StopAnswers::isLicensed, context) ? Optional.of(LICENSE_GOES_ON) : Optional.empty();
    }
    boolean proves = task.actions().stream().anyMatch(action -> action.kind().needsSuccess());
    return !proves && saysStart(answer) && !isMadeSafe(way.target(), context, true) ? Optional.of(START_GOES_ON)
        : Optional.empty();
  }

  private static boolean saysStart(String answer) {
    return Stream.of(answer.split(",")).anyMatch(
        part -> STARTS.stream().anyMatch(part::contains) && NOTHING.stream().noneMatch(part::contains));
  }

  /** Whether a step refers at once, or switches off before anything but a setting is done. */
  private static boolean isMadeSafe(Target target, RuleContext context, boolean atOnce) {
    if (!(target instanceof Target.ToStep to)) {
      return target instanceof Target.Nowhere;
    }
    Step step = context.tree().steps().get(to.step());
    boolean off = step.actions().stream().anyMatch(action -> action.kind().begins(EquipmentCondition.ISOLATED));
    boolean refers = atOnce && step instanceof Step.Finding finding && finding.refer().isPresent();
    return off || refers || (atOnce && step instanceof Step.Task && setsOnly(step) && step.ways().size() == 1
        && isMadeSafe(step.ways().get(0).target(), context, false));
  }

  private static boolean setsOnly(Step step) {
    return step.actions().stream().allMatch(action -> action.kind().object() == ActionObject.SETTING);
  }

  private static boolean switchesOn(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(action -> action.kind().ends(EquipmentCondition.ISOLATED)
        && context.state().facts().isSource(action.key()));
  }

  /** Whether a step is for the holder of a license only. */
  private static boolean isLicensed(Step step) {
    return step.header().who().stream()
        .anyMatch(holder -> holder.covers().stream().anyMatch(kind -> kind != WorkKind.LIVE_WORK));
  }

  private static boolean reaches(Way way, Predicate<Step> goal, RuleContext context) {
    if (!(way.target() instanceof Target.ToStep to)) {
      return false;
    }
    boolean[] seen = new boolean[context.tree().steps().size()];
    context.graph().mark(to.step(), seen);
    return IntStream.range(0, seen.length).filter(step -> seen[step]).mapToObj(context.tree().steps()::get)
        .anyMatch(goal);
  }
}
