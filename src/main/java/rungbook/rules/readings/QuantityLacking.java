package rungbook.rules.readings;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Quantity;
import rungbook.tree.Meter;
import rungbook.tree.Step;

/** A meter without a scale for a quantity cannot measure it. */
public final class QuantityLacking implements Rule {

  static final Code QUANTITY_LACKING = Code.of("quantity-lacking");

  @Override
  public List<Code> codes() {
    return List.of(QUANTITY_LACKING);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    Meter meter = context.tree().meter();
    for (Step step : context.tree().steps()) {
      if (step instanceof Step.MeterCheck check && meter.scale(check.quantity()).isEmpty()) {
        out.add(
            Problem.at(QUANTITY_LACKING, step.source(), check.quantitySpan()).with("quantity", check.quantity().words())
                .with("meter", meter.id()).with("known", known(meter)));
      }
    }
  }

  private static String known(Meter meter) {
    return meter.scales().keySet().stream().sorted().map(Quantity::words).collect(Collectors.joining(", "));
  }
}
