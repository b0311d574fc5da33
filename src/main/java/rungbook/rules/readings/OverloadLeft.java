package rungbook.rules.readings;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.system.Quantity;
import rungbook.tree.Readings;

/**
 * An open circuit reads as an overload on ohms, so overload must have a way on. Not reported if a gap up to the end of
 * the range already is.
 */
public final class OverloadLeft extends ReadingsRule {

  static final Code OVERLOAD_LEFT = Code.of("overload-left");

  @Override
  public List<Code> codes() {
    return List.of(OVERLOAD_LEFT);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    Readings readings = asked.readings();
    if (asked.check().quantity() == Quantity.OHMS && asked.isSettled() && readings.wayOfOverload().isEmpty()
        && !hasGapAtTop(readings)) {
      out.add(asked.at(OVERLOAD_LEFT, asked.check().quantitySpan()).with("step", asked.check().title())
          .shownBy(new Witness.Reading("OL")));
    }
  }

  private static boolean hasGapAtTop(Readings readings) {
    List<Readings.Stretch> gaps = readings.gaps();
    return !gaps.isEmpty() && gaps.get(gaps.size() - 1).to() == readings.highCount();
  }
}
