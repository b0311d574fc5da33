package rungbook.rules.flow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import rungbook.system.remedy.Remedy;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The findings of a tree that lead on to a repair, and what takes their faults away. */
public final class Repairs {

  /** By the id of the finding's step: the remedies of its faults, as far as the system says where they are. */
  private final Map<String, Found> findings = new LinkedHashMap<>();

  /** @param remedies of all its faults; empty if the system does not say where one of them is */
  record Found(Step.Finding finding, List<Remedy> remedies) {}

  private Repairs() {}

  static Repairs of(Tree tree) {
    Repairs repairs = new Repairs();
    for (Step step : tree.steps()) {
      if (step instanceof Step.Finding finding && !step.ways().isEmpty()) {
        repairs.findings.put(step.id(), new Found(finding, remedies(finding, tree)));
      }
    }
    return repairs;
  }

  private static List<Remedy> remedies(Step.Finding finding, Tree tree) {
    List<Remedy> known = new ArrayList<>();
    for (NameRef fault : finding.faults()) {
      Remedy remedy = tree.remedies().get(fault.key());
      if (remedy == null || remedy.sites().isEmpty()) {
        return List.of();
      }
      known.add(remedy);
    }
    return known;
  }

  public boolean any() {
    return !findings.isEmpty();
  }

  boolean isFinding(Step step) {
    return findings.containsKey(step.id());
  }

  public Step.Finding finding(String id) {
    return found(id).finding();
  }

  /** Whether it is known which parts the faults of a finding are in. */
  public boolean isLocated(String id) {
    return !found(id).remedies().isEmpty();
  }

  /** Whether one of the faults of a finding is in a thing. */
  public boolean isAt(String id, String thing) {
    return found(id).remedies().stream().anyMatch(remedy -> remedy.isAt(thing));
  }

  /** The ids of the findings of which one fault is in a thing. */
  List<String> at(String thing) {
    return where(remedy -> remedy.isAt(thing));
  }

  /** The ids of the findings of which one fault is a power switch that is only found off. */
  List<String> foundOff(String source) {
    return where(remedy -> remedy.foundOff().filter(source::equals).isPresent());
  }

  private List<String> where(Predicate<Remedy> wanted) {
    return findings.entrySet().stream().filter(one -> one.getValue().remedies().stream().anyMatch(wanted))
        .map(Map.Entry::getKey).toList();
  }

  private Found found(String id) {
    return Objects.requireNonNull(findings.get(id));
  }
}
