package rungbook.proof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.tree.NameRef;
import rungbook.tree.Symptoms;

/**
 * Which faults a tree is for, and which of them it leaves out.
 *
 * @param symptoms the complaint in the system's words; empty if the tree does not say it, and then every fault counts
 * @param likelihood the share of the system's likelihood that shows it
 * @param healthy the share of healthy systems that shows it
 * @param faults of the system, in its order
 * @param uncovered the faults that show it and that no finding names, here or in a tree that takes over; the likeliest
 * first
 */
public record Complaint(Optional<Symptoms> symptoms, double likelihood, double healthy, List<Shown> faults,
    List<Uncovered> uncovered) {

  public Complaint {
    faults = List.copyOf(faults);
    uncovered = List.copyOf(uncovered);
  }

  /**
   * A fault of the system, or two that come together.
   *
   * @param likelihood against the other faults of the system
   * @param share of its installations that shows the complaint
   */
  public record Shown(String fault, double likelihood, double share, boolean isPair) {}

  /** @param likelihood the share of all likelihood on this complaint */
  public record Uncovered(String fault, double likelihood) {}

  /** {@code thermostat cooling; blower running; not compressor running}. */
  public static String words(Symptoms symptoms) {
    var words = new ArrayList<String>();
    String call = String.join(", ", symptoms.call().stream().map(Symptoms.Called::toString).toList());
    words.add(call.isEmpty() ? "every control at its first position" : call);
    add("seen: ", symptoms.seen(), words);
    add("not seen: ", symptoms.notSeen(), words);
    add("not all seen: ", symptoms.notAllSeen(), words);
    return String.join("; ", words);
  }

  private static void add(String key, List<NameRef> sights, List<String> words) {
    if (!sights.isEmpty()) {
      words.add(key + String.join(", ", sights.stream().map(NameRef::text).toList()));
    }
  }
}
