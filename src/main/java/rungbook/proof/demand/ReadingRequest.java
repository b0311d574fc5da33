package rungbook.proof.demand;

import java.util.List;
import java.util.Optional;

/**
 * What somebody asks for, in the words of a command line or a form. Empty words ask for nothing.
 *
 * @param at the place of the leads; a lead may also say its own, {@code Y at furnace}
 * @param leads one or two points with a comma between them, red first; empty to ask only what runs
 * @param set each a control and its position: {@code thermostat cooling}, {@code door switch bypassed}
 * @param quantity what the meter measures; empty for AC volts
 */
public record ReadingRequest(String variant, String at, String leads, List<String> set, String fault,
    String quantity) {

  public ReadingRequest {
    set = List.copyOf(set);
  }

  /** The leads as they are written, without empty ones. */
  List<String> leadNames() {
    return List.of(leads.split(",")).stream().map(String::strip).filter(lead -> !lead.isEmpty()).toList();
  }

  Optional<String> written(String words) {
    return words.isBlank() ? Optional.empty() : Optional.of(words.strip());
  }
}
