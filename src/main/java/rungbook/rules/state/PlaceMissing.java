package rungbook.rules.state;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rungbook.action.ActionObject;
import rungbook.action.ObjectNames;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/**
 * Leads go on a terminal, or a terminal is disconnected or reconnected, and the step does not say where, although the
 * terminal is at several places.
 */
public final class PlaceMissing implements Rule {

  static final Code PLACE_MISSING = Code.of("place-missing");

  @Override
  public List<Code> codes() {
    return List.of(PLACE_MISSING);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    if (context.tree().system().isEmpty() || context.tree().system().get().locations().isEmpty()) {
      return;
    }
    Vocabulary system = context.tree().system().get();
    for (Step step : context.tree().steps()) {
      if (step.at().isEmpty()) {
        NameRef point = firstPoint(step, system);
        if (point != null) {
          out.add(Problem.at(PLACE_MISSING, step.source(), point.span()).with("point", point.text())
              .with("places", String.join(", ", system.locations().values().stream().map(Location::name).toList())));
        }
      }
    }
  }

  /** The first terminal the step touches, or null if it touches none. */
  private static @Nullable NameRef firstPoint(Step step, Vocabulary system) {
    if (step instanceof Step.MeterCheck check && !check.leads().isEmpty()) {
      return check.leads().get(0);
    }
    for (Action action : step.actions()) {
      if (action.kind().object() == ActionObject.POINT || isOneOfSeveral(action, system)) {
        return action.thing();
      }
    }
    return null;
  }

  /** Whether an action disconnects or reconnects a terminal that is at several places. */
  static boolean isOneOfSeveral(Action action, Vocabulary system) {
    return action.isAboutConnecting()
        && ObjectNames.terminal(system, action.key()).filter(point -> point.locations().size() > 1).isPresent();
  }
}
