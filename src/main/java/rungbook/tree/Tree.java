package rungbook.tree;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.markdown.Document;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;
import rungbook.system.Vocabulary;
import rungbook.system.hazard.ElectricalHazards;
import rungbook.system.remedy.Remedy;

/**
 * A tree with its names resolved and its fragments included.
 *
 * @param id the file's name without {@code .md}
 * @param complaint what the customer says, in prose
 * @param symptoms the same in the words of the system; empty if the text does not say it
 * @param circuits the system with its parts, as far as it has any, in each variant that the tree is for; empty if the
 * tree names no system
 * @param notFor the variants that it says it is not for
 * @param remedies what takes each fault of the system away, by the fault's key; empty if no finding goes on
 * @param hazards what the system's wiring says; nothing if no step works on dead equipment
 * @param cautions the keys of the library's cautions
 * @param steps in the order of the text, starting with the first step; empty if the text has none
 */
public record Tree(
    String id, String title, String complaint, Optional<Symptoms> symptoms, Document document,
    Optional<Vocabulary> system, Optional<SystemVariants> circuits, List<Variant> notFor, Map<String, Remedy> remedies,
    ElectricalHazards hazards, Set<String> cautions, Meter meter, List<Step> steps) {

  public Tree {
    steps = List.copyOf(steps);
    notFor = List.copyOf(notFor);
  }

  /** The base of the system. */
  public Optional<ControlSystem> circuit() {
    return circuits.map(SystemVariants::base);
  }

  /** The keys of the variants that it says it is not for. */
  public Set<String> notForKeys() {
    return notFor.stream().map(Variant::key).collect(Collectors.toSet());
  }

  /** Whether some finding leads on to its repair. */
  public static boolean hasRepairs(List<Step> steps) {
    return steps.stream().anyMatch(step -> step instanceof Step.Finding && !step.ways().isEmpty());
  }

  public Source source() {
    return document.source();
  }
}
