package rungbook.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.library.SafetyMutants.Mutant;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.HealthyEnds;
import rungbook.rules.flow.Onward;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** Why a change that no rule notices hurts nobody. A change of a shared text has to be so in every tree that has it. */
final class HarmlessMutants {

  private HarmlessMutants() {}

  /** @param trees the trees before the change, those without the changed text too */
  static Optional<String> why(Mutant mutant, List<CompiledTree> trees) {
    List<Changed> places = trees.stream().flatMap(tree -> Changed.of(mutant, tree).stream()).toList();
    List<Optional<String>> reasons = places.stream().map(place -> why(mutant, place)).toList();
    return reasons.stream().allMatch(Optional::isPresent) ? reasons.stream().findFirst().flatMap(first -> first)
        : Optional.empty();
  }

  /** A step whose text is changed, by its index. */
  private record Changed(RuleContext context, int step, int line) {

    static List<Changed> of(Mutant mutant, CompiledTree tree) {
      RuleContext context = RuleContext.of(tree.tree());
      return IntStream.of(context.state().order())
          .filter(step -> context.state().step(step).source().name().equals(mutant.path()))
          .filter(step -> has(context.state().step(step), mutant.line()))
          .mapToObj(step -> new Changed(context, step, mutant.line())).toList();
    }

    private static boolean has(Step step, int line) {
      return line(step, step.header().section().span().start()) <= line
          && line <= line(step, step.header().section().span().end() - 1);
    }

    private static int line(Step step, int offset) {
      return (int) step.source().text().substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
    }

    Step at() {
      return context.state().step(step);
    }

    /** The ways on that the changed line and the next one are. */
    List<Way> ways() {
      return at().ways().stream().filter(way -> {
        int at = line(at(), way.span().start());
        return at == line || at == line + 1;
      }).toList();
    }
  }

  private static Optional<String> why(Mutant mutant, Changed place) {
    return switch (mutant.kind()) {
      case CAUTION_REMOVED -> HarmlessCautions.why(Names.key(mutant.item()), place.context(), place.step());
      case RESTORE_REMOVED -> when(isPowerSwitch(mutant.item(), place), "the power stays off longer");
      case POINT_NOT_PROVED_DEAD -> Optional.of("it has voltage only from what is proved");
      case OTHER_TASK_LINE_REMOVED -> when(isOpenAlready(mutant.was(), place), "it is so already")
          .or(() -> when(isReconnectingTheDead(mutant.was(), place), "the power is off and tagged"))
          .or(() -> when(isMomentOfTheSequence(mutant.was(), place), "nobody does it"));
      case ANSWERS_SWAPPED -> when(leadsToTrees(place), "the next tree begins with checks of its own")
          .or(() -> when(isProvedLater(place), "the repair is checked either way"));
      case ANSWER_SENT_TO_HEALTHY -> when(isHealthyAnyway(place), "it comes to that anyway");
      case ISOLATE_REMOVED, TRY_REMOVED -> Optional.empty();
    };
  }

  private static Optional<String> when(boolean holds, String reason) {
    return holds ? Optional.of(reason) : Optional.empty();
  }

  /** That it is on again at every end is a rule. */
  private static boolean isPowerSwitch(String thing, Changed place) {
    return place.context().tree().system().map(system -> system.controls().get(Names.key(thing)))
        .filter(control -> control.role() == Vocabulary.Role.ISOLATOR).isPresent();
  }

  private static boolean isOpenAlready(String line, Changed place) {
    if (!line.startsWith("open: ")) {
      return false;
    }
    var point = place.context().state().point();
    point.enter(place.step());
    return point.must(place.context().state().facts().of(Fact.OPEN, Names.key(line.substring("open: ".length()))));
  }

  /** A wire may stay off where the power does. */
  private static boolean isReconnectingTheDead(String line, Changed place) {
    Onward off = Onward.to(place.context().state().graph(), step -> isEnd(step, place, false), step -> true);
    Onward on = Onward.to(place.context().state().graph(), step -> isEnd(step, place, true), step -> true);
    return line.startsWith("reconnect: ") && off.after(place.step()) && !on.after(place.step());
  }

  private static boolean isEnd(int step, Changed place, boolean on) {
    Step last = place.context().state().step(step);
    boolean tagged = (last instanceof Step.End end && end.result() == Step.Result.LEFT_OFF_AND_TAGGED)
        || last.actions().stream().anyMatch(action -> action.kind().begins(EquipmentCondition.TAGGED_OUT));
    return last.isLast() && tagged != on;
  }

  /** Which moment is looked at says the circuit's model. */
  private static boolean isMomentOfTheSequence(String line, Changed place) {
    return line.startsWith("set: ") && Stream.of(line.substring("set: ".length()).split(", *")).allMatch(
        setting -> place.context().tree().system().orElseThrow().controls().values().stream()
            .anyMatch(control -> control.role() == Vocabulary.Role.STAGE && setting.startsWith(control.name() + " ")));
  }

  private static boolean leadsToTrees(Changed place) {
    return place.ways().size() == 2 && place.ways().stream().allMatch(way -> way.target() instanceof Target.ToTree);
  }

  /** After a finding, either answer leads on to the check that proves the repair. */
  private static boolean isProvedLater(Changed place) {
    var state = place.context().state();
    var point = state.point();
    point.enter(place.step());
    Onward proved = Onward.to(state.graph(), step -> state.step(step) instanceof Step.End end
        && end.result() == Step.Result.REPAIRED_AND_PROVED, step -> true);
    return point.must(state.facts().of(Fact.FOUND)) && place.ways().stream()
        .allMatch(way -> way.target() instanceof Target.ToStep to && proved.after(to.step()));
  }

  private static boolean isHealthyAnyway(Changed place) {
    return place.ways().stream().findFirst().filter(
        way -> HealthyEnds.of(place.context().tree()).isCertain(way.target())).isPresent();
  }
}
