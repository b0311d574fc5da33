package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import rungbook.source.Span;

/**
 * A caution and what demands it. {@link #ALL} is the list; a demand counts where the library has the caution.
 *
 * @param caution the caution's key
 * @param because what the step does or where it is, after "this step"
 * @param where the place in a step that demands it
 */
record CautionDemand(String caution, String because, Where where) {

  static final String CARBON_MONOXIDE = "carbon monoxide";

  /** Common practice, no source, unless the page of {@code caution-lacking} names one. */
  static final List<CautionDemand> ALL = List.of(
      new CautionDemand("attic", "is in an attic", HazardousDeeds::inAttic),
      new CautionDemand("lockout", "switches power off before hands go in", HazardousDeeds::isolating),
      new CautionDemand("stored charge", "touches what holds a capacitor's charge", HazardousDeeds::touchingCharge),
      new CautionDemand("gas", "works on a gas valve", HazardousDeeds::workingOnGas),
      new CautionDemand(CARBON_MONOXIDE, "proves the repair of a part that the burners depend on",
          HazardousDeeds::provingBurners));

  /** Finds the place in a step, by its index, that demands the caution. */
  @FunctionalInterface
  interface Where {
    Optional<Span> in(HazardousDeeds deeds, int step);
  }
}
