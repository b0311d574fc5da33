package rungbook.rules.cautions;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
      inspect(step, demands, deeds, context.state(), out);
    }
  }

  /** Reports each caution once, with the first that demands it. */
  private static void inspect(int number, List<CautionDemand> demands, HazardousDeeds deeds, PathFacts state,
      Problems out) {
    Step step = state.step(number);
    Set<String> lacking = new HashSet<>();
    Set<Span> reported = new HashSet<>();
    for (CautionDemand demand : demands) {
      if (!LineVoltageUnsaid.warns(step, demand.caution()) && !lacking.contains(demand.caution())) {
        demand.where().in(deeds, number).ifPresent(span -> {
          lacking.add(demand.caution());
          out.add(problem(step, place(span, step, reported), demand).shownBy(demand.path().to(deeds, number)));
        });
      }
    }
  }

  /** The place that demands it; where two are demanded there, the step's title or block, so that both are reported. */
  private static Span place(Span span, Step step, Set<Span> reported) {
    Span place = Stream.of(span, step.header().titleSpan(), step.header().block().kindSpan())
        .filter(one -> !reported.contains(one)).findFirst().orElse(span);
    reported.add(place);
    return place;
  }

  private static Problem problem(Step step, Span span, CautionDemand demand) {
    return Problem.at(CAUTION_LACKING, step.source(), span).with("caution", demand.caution())
        .with("because", demand.because()).fixedBy(fix(step, demand.caution()));
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
