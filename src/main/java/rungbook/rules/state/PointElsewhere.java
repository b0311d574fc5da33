package rungbook.rules.state;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.action.ActionObject;
import rungbook.action.ObjectNames;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.FactTable;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** A lead is put on a terminal that the system does not have at the step's location. */
public final class PointElsewhere implements Rule {

  static final Code POINT_ELSEWHERE = Code.of("point-elsewhere");

  @Override
  public List<Code> codes() {
    return List.of(POINT_ELSEWHERE);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    context.tree().system().ifPresent(system -> {
      List<Step> steps = context.tree().steps();
      for (Step step : steps) {
        if (system.locations().containsKey(FactTable.place(step))) {
          inspect(step, system, out);
        }
      }
    });
  }

  private static void inspect(Step step, Vocabulary system, Problems out) {
    if (step instanceof Step.MeterCheck check) {
      for (NameRef lead : check.leads()) {
        inspect(lead, step, system, out);
      }
    }
    for (Action action : step.actions()) {
      boolean leads = action.kind().object() == ActionObject.POINT;
      if (leads || (action.isAboutConnecting() && ObjectNames.terminal(system, action.key()).isPresent())) {
        inspect(action.thing(), step, system, out);
      }
    }
  }

  private static void inspect(NameRef lead, Step step, Vocabulary system, Problems out) {
    Vocabulary.Point point = system.points().get(lead.key());
    if (point != null && !point.locations().isEmpty() && !point.locations().contains(FactTable.place(step))) {
      out.add(Problem.at(POINT_ELSEWHERE, step.source(), lead.span()).with("point", point.name())
          .with("place", step.at().orElseThrow().text()).with("places", names(point.locations(), system)));
    }
  }

  private static String names(Set<String> places, Vocabulary system) {
    return places.stream().map(system.locations()::get).filter(Objects::nonNull).map(Vocabulary.Location::name).sorted()
        .collect(Collectors.joining(", "));
  }
}
