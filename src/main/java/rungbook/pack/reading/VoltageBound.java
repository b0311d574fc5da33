package rungbook.pack.reading;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import rungbook.rules.state.Sources;
import rungbook.system.Vocabulary;
import rungbook.tree.Meter;
import rungbook.tree.Step;

/**
 * The highest voltage that a meter can show at the leads of a check.
 *
 * @param volts with the margin and the meter's error
 * @param onControlPoints whether the system marks neither lead's point with line voltage
 */
public record VoltageBound(BigDecimal volts, boolean onControlPoints) {

  /** Above what the circuit gives, for what its tolerances leave out (common practice, no source). */
  private static final BigDecimal MARGIN = new BigDecimal("1.1");

  /** @param highest what the circuit gives, in volts; there is no bound where it gives nothing */
  public static Optional<VoltageBound> of(Step.MeterCheck check, Meter.Scale scale, OptionalDouble highest,
      Optional<Vocabulary> system) {
    if (highest.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal volts = BigDecimal.valueOf(highest.getAsDouble()).multiply(MARGIN);
    boolean onControlPoints = check.leads().stream().noneMatch(lead -> Sources.isLineVoltage(system, lead.key()));
    return Optional.of(new VoltageBound(volts.add(scale.errorAt(volts)), onControlPoints));
  }
}
