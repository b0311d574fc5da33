package rungbook.proof.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.Proof;

/**
 * How the proof of a tree differs from that of an earlier text of it.
 *
 * @param changes the cases that end elsewhere, those that are worse first, then the likeliest
 */
public record ProofComparison(Figures before, Figures now, List<CaseChange> changes) {

  /** Smaller differences are the choice of the installations, or a limit that moved within its range. */
  private static final double NOTED = 0.05;

  public ProofComparison {
    changes = List.copyOf(changes);
  }

  /**
   * @param named how many faults the findings name
   * @param detected of their likelihood
   * @param falseAlarms the share of healthy systems that get a fault
   * @param checks the mean over the named faults, as {@code minutes}
   */
  public record Figures(int named, double detected, double falseAlarms, double checks, double minutes) {
    static Figures of(Proof proof) {
      return new Figures(proof.claimed().faults(), proof.claimed().detected(), proof.falseAlarmShare(),
          proof.meanChecks(), proof.meanMinutes());
    }
  }

  /**
   * @param names what a finding concludes, in words; empty for any other end
   * @param share of the case's installations, from 0 to 1
   */
  public record EndShare(String title, String names, double share) {}

  /**
   * A case that ends elsewhere.
   *
   * @param name the fault; {@code healthy} for the healthy system
   * @param before the largest first; empty if it was not followed
   * @param now empty if it is no longer followed
   * @param isWorse whether less of it is found, or more of it mistaken, called healthy or left without an answer
   */
  public record CaseChange(String name, boolean isHealthy, double likelihood, List<EndShare> before,
      List<EndShare> now, boolean isWorse) {
    public CaseChange {
      before = List.copyOf(before);
      now = List.copyOf(now);
    }
  }

  /** How many faults end elsewhere. */
  public int faults() {
    return (int) changes.stream().filter(change -> !change.isHealthy()).count();
  }

  public int worse() {
    return (int) changes.stream().filter(CaseChange::isWorse).count();
  }

  /** @param before the proof of the earlier text */
  public static ProofComparison of(Proof before, Proof now) {
    Map<String, Case> earlier = cases(before);
    Map<String, Case> later = cases(now);
    List<CaseChange> changes = new ArrayList<>();
    later.forEach((name, one) -> change(name, Optional.ofNullable(earlier.get(name)), Optional.of(one))
        .ifPresent(changes::add));
    earlier.forEach((name, one) -> {
      if (!later.containsKey(name)) {
        change(name, Optional.of(one), Optional.empty()).ifPresent(changes::add);
      }
    });
    changes.sort(Comparator.comparing((CaseChange change) -> !change.isWorse())
        .thenComparing(change -> !change.isHealthy()).thenComparing(change -> -change.likelihood()));
    return new ProofComparison(Figures.of(before), Figures.of(now), changes);
  }

  /** Where a case ends in one proof. */
  private record Case(boolean isHealthy, Proof.Outcome outcome, Map<EndKey, EndShare> ends) {
    EndShares shares() {
      return new EndShares(outcome.found(), outcome.mistaken(), outcome.healthy(), outcome.referred(),
          outcome.handedOn(), outcome.nothing());
    }

    List<EndShare> largestFirst() {
      return ends.values().stream().sorted(Comparator.comparingDouble(end -> -end.share())).toList();
    }
  }

  /** The first outcome is the healthy system. */
  private static Map<String, Case> cases(Proof proof) {
    Map<String, Case> cases = new LinkedHashMap<>();
    for (Proof.Outcome outcome : proof.outcomes()) {
      cases.put(outcome.name(), new Case(cases.isEmpty(), outcome, new LinkedHashMap<>()));
    }
    for (Proof.Ending ending : proof.endings()) {
      EndKey key = EndKey.of(proof.tree(), ending);
      for (Proof.Arrived arrived : ending.arrived()) {
        Case one = cases.get(arrived.fault());
        if (one != null && arrived.share() > 0) {
          one.ends().merge(key, new EndShare(ending.title(), key.concludes(ending), arrived.share()),
              (first, second) -> new EndShare(first.title(), first.names(), first.share() + second.share()));
        }
      }
    }
    return cases;
  }

  private static Optional<CaseChange> change(String name, Optional<Case> before, Optional<Case> now) {
    if (before.isPresent() && now.isPresent() && !differ(before.get().ends(), now.get().ends())) {
      return Optional.empty();
    }
    Case known = now.or(() -> before).orElseThrow();
    boolean isWorse = before.isPresent() && now.isPresent() && now.get().shares().isWorse(before.get().shares());
    return Optional.of(new CaseChange(name, known.isHealthy(), known.outcome().likelihood(),
        before.map(Case::largestFirst).orElse(List.of()), now.map(Case::largestFirst).orElse(List.of()), isWorse));
  }

  private static boolean differ(Map<EndKey, EndShare> before, Map<EndKey, EndShare> now) {
    return before.keySet().stream().anyMatch(key -> Math.abs(share(before, key) - share(now, key)) > NOTED)
        || now.keySet().stream().anyMatch(key -> share(now, key) - share(before, key) > NOTED);
  }

  private static double share(Map<EndKey, EndShare> ends, EndKey key) {
    EndShare end = ends.get(key);
    return end == null ? 0 : end.share();
  }
}
