package rungbook.rules.cautions;

import java.util.Optional;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.rules.safety.LineVoltage;
import rungbook.rules.safety.OpenUnit;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.SystemVariants;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** The places in a tree that need a caution. Each method answers for one step, by its index. */
final class HazardousPlaces {

  private final RuleContext context;

  HazardousPlaces(RuleContext context) {
    this.context = context;
  }

  /** Leads on line voltage are reported by {@link LineVoltageUnsaid}. */
  Optional<Span> live(int step) {
    return LineVoltage.met(step(step), context.tree()).isPresent() ? Optional.empty()
        : OpenUnit.liveAt(step, context).flatMap(arrival -> place(step));
  }

  Optional<Span> besideBlower(int step) {
    return besideMotor("blower", step);
  }

  Optional<Span> besideFan(int step) {
    return besideMotor("fan", step);
  }

  /** @param word in the motor's name */
  private Optional<Span> besideMotor(String word, int step) {
    return hasMotor(word, FactTable.place(step(step)))
        ? OpenUnit.liveAt(step, context).flatMap(arrival -> place(step)) : Optional.empty();
  }

  /** A path on which the step's place is open and live. */
  Optional<Witness> path(int step) {
    return OpenUnit.liveAt(step, context).flatMap(JointStates.Arrival::shown);
  }

  private Step step(int step) {
    return context.state().step(step);
  }

  private Optional<Span> place(int step) {
    return step(step).at().map(NameRef::span);
  }

  private boolean hasMotor(String word, String place) {
    return context.tree().circuits().stream().flatMap(SystemVariants::all)
        .flatMap(system -> system.parts(Part.Load.class))
        .filter(load -> context.tree().system().orElseThrow().isKind(load.key(), "motor"))
        .filter(load -> (" " + load.key() + " ").contains(" " + word + " "))
        .flatMap(load -> load.branches().stream()).anyMatch(limb -> isAt(limb, place));
  }

  private static boolean isAt(PartBranch limb, String place) {
    return limb.a().place().equals(place) || limb.b().place().equals(place);
  }
}
