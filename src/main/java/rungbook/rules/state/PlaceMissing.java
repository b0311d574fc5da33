package rungbook.rules.state;

import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Deed;
import rungbook.tree.Named;
import rungbook.tree.Step;
import rungbook.tree.Verb;

/** Leads go on a terminal of the system, and the step does not say where: the same name stands at several places, behind several panels. */
public final class PlaceMissing implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    if (subject.tree().system().isEmpty() || subject.tree().system().get().locations().isEmpty()) {
      return;
    }
    for (Step step : subject.tree().steps()) {
      if (step.at().isEmpty()) {
        Named point = firstPoint(step);
        if (point != null) {
          out.add(Problem.at("place-missing", step.source(), point.span()).with("point", point.text())
              .with("places", String.join(", ", subject.tree().system().get().locations().values().stream().map(place -> place.name()).toList())));
        }
      }
    }
  }

  /** The first terminal the step touches, or null if it touches none. */
  private static Named firstPoint(Step step) {
    if (step instanceof Step.MeterCheck check && !check.leads().isEmpty()) {
      return check.leads().get(0);
    }
    for (Deed deed : step.deeds()) {
      if (deed.verb() == Verb.PROVE_DEAD) {
        return deed.thing();
      }
    }
    return null;
  }
}
