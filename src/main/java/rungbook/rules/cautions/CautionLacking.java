package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Block;
import rungbook.markdown.Entry;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.tree.Step;

/** A step does something, or is somewhere, that demands a caution, and does not name it. */
public final class CautionLacking implements Rule {

  static final Code CAUTION_LACKING = Code.of("caution-lacking");

  @Override
  public List<Code> codes() {
    return List.of(CAUTION_LACKING);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<CautionDemand> demands = CautionDemand.ALL.stream()
        .filter(demand -> context.tree().cautions().contains(demand.caution())).toList();
    if (demands.isEmpty() || context.state().isTooLarge()) {
      return;
    }
    HazardousDeeds deeds = new HazardousDeeds(context);
    for (int step : context.state().order()) {
      for (CautionDemand demand : demands) {
        if (!LineVoltageUnsaid.warns(context.state().step(step), demand.caution())) {
          demand.where().in(deeds, step).ifPresent(
              span -> out.add(problem(context.state().step(step), span, demand)
                  .shownBy(path(deeds, step, demand, context.state()))));
        }
      }
    }
  }

  private static Problem problem(Step step, Span span, CautionDemand demand) {
    return Problem.at(CAUTION_LACKING, step.source(), span).with("caution", demand.caution())
        .with("because", demand.because()).fixedBy(fix(step, demand.caution()));
  }

  private static Optional<Witness> path(HazardousDeeds deeds, int step, CautionDemand demand, PathFacts state) {
    boolean byRepair = demand.caution().equals(CautionDemand.CARBON_MONOXIDE);
    return state.show(byRepair ? deeds.pathByRepair(step) : state.graph().shortestTo(step), step);
  }

  /** Adds the caution to the step's own line, or a line with it. */
  private static Optional<Fix> fix(Step step, String caution) {
    Block block = step.header().block();
    Optional<Entry> line = block.entry("cautions");
    if (line.isPresent() && line.get().valueSpan().length() != line.get().value().length()) {
      return Optional.empty(); // in quotes or on several lines
    }
    Edit edit = line.filter(entry -> !entry.value().isEmpty())
        .map(entry -> new Edit(step.source(), Span.at(entry.valueSpan().end()), ", " + caution))
        .orElseGet(() -> new Edit(step.source(), Span.at(block.kindSpan().end()), "\ncautions: " + caution));
    boolean empty = line.isPresent() && line.get().value().isEmpty();
    return empty ? Optional.empty() : Optional.of(new Fix("add the caution `" + caution + "`", List.of(edit)));
  }
}
