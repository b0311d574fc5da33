package rungbook.proof.demand;

import java.util.List;
import java.util.Optional;
import rungbook.circuit.network.CircuitState;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Quantity;
import rungbook.system.Terminal;
import rungbook.tree.Meter;

/**
 * A request whose names the system has.
 *
 * @param variant the name of the variant; empty for the base
 * @param leads red first; empty to ask only what runs, or for a quantity outside the circuit
 * @param stated the name of a quantity that the system states outside the circuit
 * @param settings the settings that differ from the start, in words
 */
public record ReadingQuestion(ControlSystem system, String variant, List<Terminal> leads, Quantity quantity,
    Optional<String> stated, Meter meter, CircuitState state, List<String> settings, Optional<Fault> fault) {

  public ReadingQuestion {
    leads = List.copyOf(leads);
    settings = List.copyOf(settings);
  }

  /** What is measured: {@code AC volts}, {@code temperature rise}. */
  public String measured() {
    return stated.orElse(quantity.words());
  }

  /** A lead's name as the text writes it, with its place. */
  public String words(Terminal lead) {
    return system.vocabulary().pointName(lead.point()) + " at " + place(lead);
  }

  private String place(Terminal lead) {
    return Optional.ofNullable(system.vocabulary().locations().get(lead.place())).map(place -> place.name())
        .orElse(lead.place());
  }
}
