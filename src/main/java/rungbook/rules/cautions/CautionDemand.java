package rungbook.rules.cautions;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import rungbook.source.Span;
import rungbook.source.Witness;

/**
 * A caution and what demands it. {@link #ALL} is the list; a demand counts where the library has the caution.
 *
 * @param caution the caution's key
 * @param because what the step does or where it is, after "this step"
 * @param where the place in a step that demands it
 * @param path by which way the step is reached so that it demands it
 */
record CautionDemand(String caution, String because, Where where, Path path) {

  /** Common practice, no source, unless the page of {@code caution-lacking} names one. */
  static final List<CautionDemand> ALL = List.of(
      of("attic", "is in an attic", HazardousDeeds::inAttic),
      of("lockout", "switches power off before hands go in", HazardousDeeds::isolating),
      of("lockout", "leaves power off", HazardousDeeds::taggingOut),
      atOpenUnit("line voltage", "is at an open unit that is live", HazardousPlaces::live),
      of("line voltage", "takes a panel off that covers line voltage",
          (deeds, step) -> deeds.places().openingLine(step)),
      of("line voltage", "pushes a pull-out in", HazardousDeeds::pushingIn),
      of("line voltage", "turns a breaker on", HazardousDeeds::turningBreakerOn),
      new CautionDemand("line voltage", "is at an open unit that was found still live",
          (deeds, step) -> deeds.places().stillLive(step), (deeds, step) -> deeds.places().pathStillLive(step)),
      of("live control voltage", "puts leads on live terminals", HazardousDeeds::leadsOnControl),
      atOpenUnit("moving blower", "is at an open unit that is live and has a blower", HazardousPlaces::besideBlower),
      of("moving blower", "takes a panel off in front of a blower",
          (deeds, step) -> deeds.places().openingBlower(step)),
      of("moving blower", "reaches beside a blower for its filter", HazardousDeeds::handlingFilter),
      of("moving blower", "looks at a filter beside a blower", (deeds, step) -> deeds.sights().filter(step)),
      atOpenUnit("moving fan", "is at an open unit that is live and has a fan", HazardousPlaces::besideFan),
      of("moving fan", "looks or listens beside a fan", (deeds, step) -> deeds.sights().besideFan(step)),
      of("held door switch", "defeats a switch, or puts it back to work with the power on", HazardousDeeds::defeating),
      of("held door switch", "turns power on while a switch is defeated", HazardousDeeds::runningDefeated),
      of("stored charge", "touches what holds a capacitor's charge", HazardousDeeds::touchingCharge),
      new CautionDemand("stored charge", "proves dead what is beside a capacitor",
          (deeds, step) -> deeds.places().provingBesideCapacitor(step),
          (deeds, step) -> deeds.places().pathUnwarned(step)),
      of("sharp edges", "takes a panel off", HazardousDeeds::openingPanel),
      of("hot surfaces", "touches what burners or heaters make hot", HazardousDeeds::touchingHot),
      of("hot surfaces", "looks at what is hot", (deeds, step) -> deeds.sights().hot(step)),
      of("hot surfaces", "takes a panel off in front of a heater",
          (deeds, step) -> deeds.places().openingHeater(step)),
      of("burner flame", "looks at the burners", (deeds, step) -> deeds.sights().flame(step)),
      new CautionDemand("burner flame", "makes the burners light", HazardousDeeds::lightingBurners,
          HazardousDeeds::pathToLighting),
      of("burner flame", "lets a furnace run with a switch defeated", HazardousDeeds::burningDefeated),
      of("water and wiring", "works on a float switch", HazardousDeeds::workingInWater),
      of("water and wiring", "looks for water beside wires", (deeds, step) -> deeds.sights().water(step)),
      of("flooded controls", "looks for water beside wires", (deeds, step) -> deeds.sights().water(step)),
      of("gas", "works on a gas valve", HazardousDeeds::workingOnGas),
      of("gas", "looks for gas, or sends people out", HazardousDeeds::meetingGas),
      of("carbon monoxide", "smells for gas", (deeds, step) -> deeds.sights().smellingGas(step)),
      of("carbon monoxide", "lets a furnace run with a switch defeated", HazardousDeeds::burningDefeated),
      new CautionDemand("carbon monoxide", "proves the repair of a part that the burners depend on",
          HazardousDeeds::provingBurners, HazardousDeeds::pathByRepair));

  /** Finds the place in a step, by its index, that demands the caution. */
  @FunctionalInterface
  interface Where {
    Optional<Span> in(HazardousDeeds deeds, int step);
  }

  /** Finds a path on which the step demands the caution. */
  @FunctionalInterface
  interface Path {
    Optional<Witness> to(HazardousDeeds deeds, int step);
  }

  private static CautionDemand of(String caution, String because, Where where) {
    return new CautionDemand(caution, because, where, HazardousDeeds::shortestPath);
  }

  private static CautionDemand atOpenUnit(String caution, String because,
      BiFunction<HazardousPlaces, Integer, Optional<Span>> where) {
    return new CautionDemand(caution, because, (deeds, step) -> where.apply(deeds.places(), step),
        (deeds, step) -> deeds.places().path(step));
  }
}
