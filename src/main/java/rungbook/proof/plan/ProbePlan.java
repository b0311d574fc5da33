package rungbook.proof.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.tree.Meter;
import rungbook.tree.Step;

/** How a check of a tree is put to the circuit. */
public final class ProbePlan {

  private final Installations installations;
  private final Vocabulary words;
  private final Meter instrument;

  /** @param instrument the meter that the tree is done with */
  ProbePlan(Installations installations, Vocabulary words, Meter instrument) {
    this.installations = installations;
    this.words = words;
    this.instrument = instrument;
  }

  /** Where the meter goes; empty if the circuit does not model what is read there. */
  public Optional<Probe> probe(Step.MeterCheck check, String place) {
    if (check.stated().isPresent()) {
      return check.stated().map(name -> Probe.outside(Names.key(name))).filter(installations::models);
    }
    List<Optional<Terminal>> leads = check.leads().stream().map(lead -> terminal(words, lead.key(), place)).toList();
    Optional<MeterFunction> meter = meter(check.quantity());
    if (meter.isEmpty() || leads.isEmpty() || leads.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    Terminal red = leads.get(0).get();
    double load = inputOhms(instrument, check.quantity(), meter.get());
    return Optional.of(new Probe(meter.get(), load, red, leads.get(leads.size() - 1).get()))
        .filter(installations::models);
  }

  /** The voltage of each pair of points at a place, as far as the circuit models it. */
  public List<Probe> pairs(List<String> points, String place) {
    List<Terminal> terminals = points.stream().flatMap(point -> terminal(words, point, place).stream()).toList();
    double load = inputOhms(instrument, Quantity.AC_VOLTS, MeterFunction.VOLTS);
    List<Probe> pairs = new ArrayList<>();
    for (int red = 0; red < terminals.size(); red++) {
      for (int black = red + 1; black < terminals.size(); black++) {
        pairs.add(new Probe(MeterFunction.VOLTS, load, terminals.get(red), terminals.get(black)));
      }
    }
    return pairs.stream().filter(installations::models).toList();
  }

  /** The same leads with the meter at its low impedance, for a check at the high one. */
  public Optional<Probe> lowImpedance(Probe probe) {
    return lowImpedance(probe, instrument);
  }

  /** The same leads with a meter at its low impedance, for a check at the high one. */
  public static Optional<Probe> lowImpedance(Probe probe, Meter instrument) {
    double load = inputOhms(instrument, Quantity.AC_VOLTS_LOW_IMPEDANCE, MeterFunction.VOLTS_LOW_IMPEDANCE);
    return probe.meter() == MeterFunction.VOLTS
        ? Optional.of(new Probe(MeterFunction.VOLTS_LOW_IMPEDANCE, load, probe.red(), probe.black()))
        : Optional.empty();
  }

  /** The load that the meter's text states, else the usual one. */
  public static double inputOhms(Meter instrument, Quantity quantity, MeterFunction meter) {
    return instrument.scale(quantity).flatMap(Meter.Scale::inputOhms).map(BigDecimal::doubleValue)
        .orElse(meter.usualOhms());
  }

  /** A point as a step at a place means it: the one there, else the only one there is. */
  public static Optional<Terminal> terminal(Vocabulary words, String point, String place) {
    Vocabulary.Point known = words.points().get(point);
    if (known == null) {
      return Optional.empty();
    }
    boolean here = known.locations().contains(place);
    return here || known.locations().size() == 1
        ? Optional.of(new Terminal(point, here ? place : known.locations().iterator().next())) : Optional.empty();
  }

  /** The function of a meter that reads a quantity; empty if the circuit has no such quantity. */
  public static Optional<MeterFunction> meter(Quantity quantity) {
    return Optional.ofNullable(switch (quantity) {
      case AC_VOLTS -> MeterFunction.VOLTS;
      case AC_VOLTS_LOW_IMPEDANCE -> MeterFunction.VOLTS_LOW_IMPEDANCE;
      case OHMS -> MeterFunction.OHMS;
      case AC_AMPS -> MeterFunction.AMPS;
      case MICROFARADS -> MeterFunction.MICROFARADS;
      case DC_VOLTS, DC_MICROAMPS, TEMPERATURE, TEMPERATURE_DIFFERENCE, PRESSURE -> null;
    });
  }

  /** Whether the system says anything of what a check looks at. */
  public boolean shows(Step.SenseCheck check) {
    return check.things().stream().anyMatch(thing -> installations.shows(thing.key()));
  }
}
