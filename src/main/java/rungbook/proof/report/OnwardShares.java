package rungbook.proof.report;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;
import rungbook.proof.accounting.ReportNumbers;

/** What becomes of the faults that a tree hands on to another one. */
public final class OnwardShares {

  private OnwardShares() {}

  /**
   * By how it ends, the share of what is handed on, over the faults by likelihood.
   *
   * @param through the id of the tree that takes over
   */
  private static Map<Journey.Fate, Double> of(Proof proof, String through) {
    var byFate = new EnumMap<Journey.Fate, Double>(Journey.Fate.class);
    IntStream.range(1, proof.journeys().size()).forEach(i -> proof.journeys().get(i).places().stream()
        .filter(place -> place.through().equals(through))
        .forEach(place -> byFate.merge(place.fate(), place.share() * proof.outcomes().get(i).likelihood(),
            Double::sum)));
    double all = byFate.values().stream().mapToDouble(Double::doubleValue).sum();
    byFate.replaceAll((fate, likelihood) -> all == 0 ? 0 : likelihood / all);
    return byFate;
  }

  /** {@code found 97 %, referred 3 %}; empty where only the healthy system goes there. */
  public static String words(Proof proof, String through) {
    return String.join(", ", of(proof, through).entrySet().stream().filter(one -> one.getValue() > 0)
        .map(one -> one.getKey().words() + " " + ReportNumbers.percent(one.getValue()))
        .toList());
  }
}
